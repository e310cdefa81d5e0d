import { spawnSync } from 'node:child_process';
import jsQR from 'jsqr';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import { PAPERS, type PaperName } from '../../../geometry/files/paper/page-size.ts';
import { writeSpecSheet } from '../../../geometry/files/paper/spec-sheet.ts';
import type { ProofAsked } from '../../../geometry/proof/proof-asked.ts';
import { TILE_FRAME, layTiles } from '../../../geometry/proof/tiles.ts';
import { writeProof } from '../../../geometry/proof/write-proof.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { LANGUAGES } from '../../../web/words/languages.ts';
import { speakFromFiles } from './speak-from-files.ts';
import { asked, fonts, MM, plannedPlate, QUOTE, SHOP, shipped } from '../../proof/set-up.ts';
import { readAllPages } from '../../readers/pdf-reader.ts';
import { askTool, fontsOf, hasTool, pageImage } from '../../readers/poppler.ts';
import { type Claim, type Measured, once, rounded } from '../claim.ts';
import { sameInBrowser } from './browser-bytes.ts';

const DESIGNS = ['golden-wedding', 'makers-head', 'cask-series'];
const PAPER_NAMES: readonly PaperName[] = ['a4', 'letter'];

interface Paper {
  readonly name: string;
  readonly design: ProofAsked['design'];
  readonly proof: Uint8Array;
  readonly sheet: Uint8Array;
  readonly page: PaperName;
}

/** Proof and spec sheet of designs that ship, on both papers, in all languages. */
const papers = once(async () => {
  const all: Paper[] = [];
  for (const name of DESIGNS) {
    const { design, plates } = await shipped(name);
    for (const page of PAPER_NAMES) {
      for (const { id: language } of LANGUAGES) {
        const manner = { page, language, speak: speakFromFiles(language) };
        const proof = await writeProof(asked({ design, plates, quote: QUOTE, shop: SHOP, ...manner }), fonts);
        const sheet = await writeSpecSheet(design, plates, fonts, BUILT_IN, manner);
        all.push({ name: `${name}, ${page}, ${language}`, design, proof, sheet, page });
      }
    }
  }
  return all;
});

/** How many of all papers pass; the first that fails is named. */
async function counted(passes: (bytes: Uint8Array, paper: Paper) => boolean | Promise<boolean>): Promise<Measured> {
  let [good, all, bad] = [0, 0, ''];
  for (const paper of await papers()) {
    for (const [kind, bytes] of [
      ['proof', paper.proof],
      ['sheet', paper.sheet],
    ] as const) {
      all++;
      if (await passes(bytes, paper)) good++;
      else bad ||= ` (${kind} of ${paper.name})`;
    }
  }
  return { value: `${good} of ${all}${bad}`, unit: 'papers', ok: good === all };
}

function skipped(tool: string): Measured {
  return { value: `not measured: there is no ${tool} here`, unit: '', ok: true };
}

async function worstDrawnMm(): Promise<number> {
  let worst = 0;
  for (const page of PAPER_NAMES) {
    for (const [large, small] of [
      [533.4, 266.7],
      [1200, 90],
      [300, 150],
      [617.5, 411],
    ] as const) {
      const plates = [plannedPlate(large, 'Large'), plannedPlate(small, 'Small')];
      const read = (await readAllPages(await writeProof(asked({ plates, page }), fonts))).pages[1];
      const scale = Number(/Scale 1:([\d.]+)/.exec(read?.texts.map((t) => t.text).join(' ') ?? '')?.[1]);
      const widths = (read?.boxes ?? [])
        .filter((b) => Math.abs(b.maxX - b.minX - (b.maxY - b.minY)) < 1e-3)
        .map((b) => ((b.maxX - b.minX) / MM) * scale);
      for (const mm of [large, small]) worst = Math.max(worst, Math.min(...widths.map((w) => Math.abs(w - mm))));
    }
  }
  return worst;
}

/** Points of the rim on every page, where they come to lie when the pages are put together, against the true circle. */
async function worstOnTilesMm(): Promise<number> {
  let worst = 0;
  for (const page of PAPER_NAMES) {
    for (const mm of [120, 258, 533.4, 900, 1200]) {
      const tiles = layTiles(mm, PAPERS[page]);
      const { pages } = await readAllPages(
        await writeProof(asked({ plates: [plannedPlate(mm)], page, tiles: true }), fonts),
      );
      tiles.forEach((tile, i) => {
        const read = pages[pages.length - tiles.length + i];
        const round = (read?.boxes ?? []).filter((b) => Math.abs(b.maxX - b.minX - (b.maxY - b.minY)) < 1e-2);
        const rim = round.reduce((a, b) => (b.maxX - b.minX > a.maxX - a.minX ? b : a));
        const height = read?.size[1] ?? 0;
        // The four points of the rim that its box touches, in the frame of the whole.
        const x = (pt: number) => pt / MM - TILE_FRAME.left + tile.left;
        const y = (pt: number) => (height - pt) / MM - TILE_FRAME.top + tile.top;
        const [cx, cy] = [(rim.minX + rim.maxX) / 2, (rim.minY + rim.maxY) / 2];
        for (const [px, py] of [
          [x(rim.minX), y(cy)],
          [x(rim.maxX), y(cy)],
          [x(cx), y(rim.minY)],
          [x(cx), y(rim.maxY)],
        ] as const) {
          worst = Math.max(worst, Math.abs(Math.hypot(px, py) - mm / 2));
        }
      });
    }
  }
  return worst;
}

/** The rim as it is painted: dark dots of all pages at true size, where nothing else is near, against the circle. */
async function paintedRim(): Promise<Measured> {
  if (!hasTool('pdftoppm')) return skipped('pdftoppm');
  const [mm, dpi] = [400, 250];
  const tiles = layTiles(mm, PAPERS.a4);
  const bytes = await writeProof(asked({ plates: [plannedPlate(mm)], tiles: true }), fonts);
  const { pages } = await readAllPages(bytes);
  const off = new Map<number, number[]>();
  tiles.forEach((tile, i) => {
    const { rgba, width, height } = pageImage(bytes, pages.length - tiles.length + i + 1, dpi);
    for (let row = 0; row < height; row++) {
      for (let column = 0; column < width; column++) {
        const dark = 1 - (rgba[(row * width + column) * 4 + 2] ?? 255) / 255;
        if (dark < 0.5) continue;
        const x = ((column + 0.5) * 25.4) / dpi - TILE_FRAME.left;
        const y = ((row + 0.5) * 25.4) / dpi - TILE_FRAME.top;
        if (x < 0 || y < 0 || x > tile.width || y > tile.height) continue;
        const radius = Math.hypot(x + tile.left, y + tile.top);
        const way = Math.round((Math.atan2(y + tile.top, x + tile.left) * 180) / Math.PI);
        if (Math.abs(radius - mm / 2) < 1) off.set(way, [...(off.get(way) ?? []), radius - mm / 2]);
      }
    }
  });
  // The middle of the dots of each degree: crosses and seams that lie over the rim weigh little.
  const middles = [...off.values()].map((all) => all.sort((a, b) => a - b)[all.length >> 1] ?? Infinity);
  const worst = Math.max(...middles.map(Math.abs));
  return { value: rounded(worst), unit: `mm at ${middles.length} degrees`, ok: worst <= 0.1 && middles.length >= 360 };
}

function sameElsewhere(): Measured {
  const places = [
    { TZ: 'UTC', LANG: 'C' },
    { TZ: 'Asia/Kathmandu', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' },
    { TZ: 'America/St_Johns', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
  ];
  const marks = places.map((place) => {
    const args = ['--import', 'tsx', 'tests/figures/proof/write-papers.ts'];
    return spawnSync(process.execPath, args, { encoding: 'utf8', env: { ...process.env, ...place } }).stdout.trim();
  });
  const ok = new Set(marks).size === 1 && /^[0-9a-f]{64} [0-9a-f]{64}$/.test(marks[0] ?? '');
  return { value: ok ? 'the same' : marks.join(' | '), unit: `in ${places.length} zones and languages`, ok };
}

export const PDF_CLAIMS: readonly Claim[] = [
  {
    name: 'pdf-plate-drawn',
    wanted: 'at most 0.1 mm of the plate, at the stated scale',
    async measure() {
      const worst = await worstDrawnMm();
      return { value: rounded(worst), unit: 'mm', ok: worst <= 0.1 };
    },
  },
  {
    name: 'pdf-tiles-true',
    wanted: 'rim put together at most 0.1 mm off, 120 to 1200 mm',
    async measure() {
      const worst = await worstOnTilesMm();
      return { value: rounded(worst), unit: 'mm', ok: worst <= 0.1 };
    },
  },
  { name: 'pdf-tiles-painted', wanted: 'rim as poppler paints it at most 0.1 mm off, all round', measure: paintedRim },
  {
    name: 'pdf-page-sizes',
    wanted: 'all',
    measure: () =>
      counted(async (bytes, { page }) => {
        const { pages } = await readAllPages(bytes);
        const { widthMm, heightMm } = PAPERS[page];
        return pages.every(
          ({ size }) => Math.abs(size[0] / MM - widthMm) < 0.01 && Math.abs(size[1] / MM - heightMm) < 0.01,
        );
      }),
  },
  {
    name: 'pdf-texts-found',
    wanted: 'title, fingerprint and, on the proof, every text by another reader: all',
    measure: async () => {
      if (!hasTool('pdftotext')) return skipped('pdftotext');
      const proofs = new Set((await papers()).map((p) => p.proof));
      return counted((bytes, { design }) => {
        const text = askTool('pdftotext', ['-layout', '{}', '-'], bytes).text;
        const lettering = design.elements.flatMap((e) => (isText(e) ? e.text.split('\n') : []));
        const wanted = [design.title, showFingerprint(fingerprintOf(design)), ...(proofs.has(bytes) ? lettering : [])];
        return wanted.every((part) => text.includes(part.trim()));
      });
    },
  },
  {
    name: 'pdf-fonts-embedded',
    wanted: 'all, as subsets',
    measure: () =>
      hasTool('pdffonts')
        ? counted((bytes) => fontsOf(bytes).all === 2 && fontsOf(bytes).loose.length === 0)
        : Promise.resolve(skipped('pdffonts')),
  },
  {
    name: 'pdf-tagged',
    wanted: 'all',
    measure: () =>
      hasTool('pdfinfo')
        ? counted((bytes) => /Tagged: +yes/.test(askTool('pdfinfo', ['{}'], bytes).text))
        : Promise.resolve(skipped('pdfinfo')),
  },
  {
    name: 'pdf-sound',
    wanted: 'qpdf finds nothing: all',
    measure: () =>
      hasTool('qpdf')
        ? counted((bytes) => askTool('qpdf', ['--check', '{}'], bytes).status === 0)
        : Promise.resolve(skipped('qpdf')),
  },
  {
    name: 'pdf-code-read',
    wanted: 'fingerprint and title read from the painted spec sheet: all',
    async measure() {
      if (!hasTool('pdftoppm')) return skipped('pdftoppm');
      const all = await papers();
      const good = all.filter(({ design, sheet }) => {
        const { rgba, width, height } = pageImage(sheet, 1, 150);
        return jsQR(rgba, width, height)?.data === `bridgehead:${fingerprintOf(design)};${design.title}`;
      });
      return { value: `${good.length} of ${all.length}`, unit: 'sheets', ok: good.length === all.length };
    },
  },
  {
    name: 'pdf-same-bytes',
    wanted: 'the same in processes of other time zones and languages',
    measure: () => Promise.resolve(sameElsewhere()),
  },
  { name: 'pdf-browser-bytes', wanted: 'those of a browser are those of Node: 2 of 2', measure: sameInBrowser },
];
