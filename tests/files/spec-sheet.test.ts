import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packageFile } from '../../fonts/node-faces.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { writeSpecSheet } from '../../geometry/files/paper/spec-sheet.ts';
import type { Finding, Severity } from '../../geometry/findings.ts';
import { estimatePlate } from '../../geometry/files/paper/estimate-plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { paperSpeak } from '../../web/words/paper-speak.ts';
import { readPdf } from '../readers/pdf-reader.ts';
import { askTool, hasTool } from '../readers/poppler.ts';
import { HAND_PRINT, HAND_PRINT_SHOWN, handDesign, handPlate } from './hand-plate.ts';

const face = (weight: number) =>
  new Uint8Array(
    readFileSync(packageFile('@fontsource/source-sans-3', `files/source-sans-3-latin-${weight}-normal.woff`)),
  );
const font = { regular: face(400), bold: face(600) };
const finding = (severity: Severity, sentence: string): Finding => ({
  code: 'made-up',
  severity,
  place: { kind: 'plate' },
  elementIds: [],
  sentence,
});
const plateOf = (diameterMm: number, name: string, findings: readonly Finding[] = []) => {
  const plate = handPlate(diameterMm, name, findings);
  return { plate, plan: planCuts(plate) };
};
const sheet = (design: Design, ...plates: ReturnType<typeof plateOf>[]) =>
  writeSpecSheet(design, plates, font, BUILT_IN);
/** ISO 32000-1: a unit of default user space is 1/72 in; 1 in = 25.4 mm. */
const MM = 72 / 25.4;

describe('spec sheet', () => {
  it('is one A4 page with title, language and the texts of the job', async () => {
    const order = { who: 'Marrow Lane Perry', reference: 'Cask 27', neededBy: '2027-05-14', notes: 'Flat, please.' };
    const read = await readPdf(
      await sheet(handDesign({ order }), plateOf(533.4, 'Large'), plateOf(266.7, 'Half size')),
    );
    expect(read.pages).toBe(1);
    // ISO 216: A4 is 210 mm x 297 mm.
    expect(read.size[0] / MM).toBeCloseTo(210, 2);
    expect(read.size[1] / MM).toBeCloseTo(297, 2);
    expect(read.title).toContain('Marrow Lane Perry');
    expect(read.lang).toBe('en');
    const all = read.texts.map((t) => t.text).join(' | ');
    for (const text of [
      HAND_PRINT_SHOWN,
      '533.4 mm',
      '21.000 in',
      '304 stainless steel',
      'Fibre laser',
      'Cask 27',
      'Flat, please.',
    ]) {
      expect(all).toContain(text);
    }
    expect(all).toContain('29 CFR 1910.107');
    expect(all).not.toContain('NFPA 51B');
  });

  it('gives the same bytes twice', async () => {
    const [one, two] = [await sheet(handDesign(), plateOf(400, 'A')), await sheet(handDesign(), plateOf(400, 'A'))];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(two))).toBe(0);
  });

  it.each([
    [533.4, 266.7],
    [300, 150],
    [1200, 90],
  ])('draws plates of %d and %d mm right to 0.1 mm of the plate at the scale it states', async (large, small) => {
    const read = await readPdf(await sheet(handDesign(), plateOf(large, 'Large'), plateOf(small, 'Small')));
    const scale = Number(/^Scale 1:([\d.]+)$/.exec(read.texts.find((t) => t.text.startsWith('Scale'))!.text)![1]);
    const widths = read.boxes
      .filter((b) => Math.abs(b.maxX - b.minX - (b.maxY - b.minY)) < 1e-3)
      .map((b) => ((b.maxX - b.minX) / MM) * scale);
    for (const diameter of [large, small]) {
      expect(Math.min(...widths.map((w) => Math.abs(w - diameter)))).toBeLessThan(0.1);
    }
  });

  it('is on Letter too, and in another language', async () => {
    // ANSI Y14.1: size A is 8.5 in x 11 in.
    const manner = { page: 'letter', language: 'de', speak: await paperSpeak('de') } as const;
    const bytes = await writeSpecSheet(handDesign(), [plateOf(533.4, 'Large')], font, BUILT_IN, manner);
    const read = await readPdf(bytes);
    expect(read.pages).toBe(1);
    expect(read.size).toEqual([612, 792]);
    expect(read.lang).toBe('de');
    const all = read.texts.map((t) => t.text).join(' | ');
    for (const text of ['533,4 mm', 'Edelstahl', 'Schnittlänge', 'Hält zusammen', 'Schnittkanten sind scharf']) {
      expect(all).toContain(text);
    }
    expect(all).not.toMatch(/Cutting|Findings|sharp/);
  });

  it('says what one plate takes of the machine and of a sheet', async () => {
    const read = await readPdf(await sheet(handDesign(), plateOf(500, 'Large')));
    const beside = (label: string) => {
      const at = read.texts.find((t) => t.text.startsWith(label))!;
      return read.texts.find((t) => t.x > at.x + at.width && Math.abs(t.y - at.y) < 1)!.text;
    };
    const [minutes, seconds] = beside('Time to cut').match(/\d+/g)!.map(Number);
    const { seconds: guessed } = estimatePlate(plateOf(500, 'Large'), handDesign(), BUILT_IN);
    expect(minutes! * 60 + seconds!).toBe(Math.round(guessed!));
    // The square of 500 mm and what stays beside it, of a sheet of 2500 mm x 1250 mm: 8 % and a little more.
    expect(parseFloat(beside('Of a sheet'))).toBeGreaterThan((100 * 500 * 500) / (2500 * 1250));
    expect(parseFloat(beside('Of a sheet'))).toBeLessThan(9.5);
  });

  it('says who accepted a finding, and only of the very fingerprint', async () => {
    const findings = [finding('look', 'A small thing.')];
    const accepted = (fingerprint: string) => [
      { code: 'made-up', plate: 'large', who: 'Ada Pell', at: '2027-01-04', fingerprint },
    ];
    const of = async (fingerprint: string) => {
      const design = handDesign({ accepted: accepted(fingerprint) });
      return (await readPdf(await sheet(design, plateOf(300, 'Large', findings)))).texts.map((t) => t.text).join(' ');
    };
    expect(await of(HAND_PRINT)).toContain('A small thing. Accepted by Ada Pell, 2027-01-04.');
    expect(await of('f'.repeat(64))).not.toContain('Accepted');
  });

  it('shows at least the worst finding, however little room the paper leaves', async () => {
    const stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'torch' } as const;
    const findings = [
      finding('stop', 'A piece falls out.'),
      ...Array.from({ length: 9 }, (_, i) => finding('note', `Note ${i}.`)),
    ];
    const manner = { page: 'letter', language: 'en' } as const;
    const plates = [plateOf(533, 'Large', findings), plateOf(266, 'Half', findings)];
    const read = await readPdf(await writeSpecSheet(handDesign({ stock }), plates, font, BUILT_IN, manner));
    expect(read.texts.map((t) => t.text)).toContain('A piece falls out.');
  });

  it.runIf(hasTool('pdfinfo'))('is tagged, and read out in the order of the page', async () => {
    const bytes = await sheet(handDesign(), plateOf(300, 'A', [finding('note', 'A small thing.')]));
    expect(askTool('pdfinfo', ['{}'], bytes).text).toMatch(/Tagged: +yes/);
    const tree = askTool('pdfinfo', ['-struct-text', '{}'], bytes).text;
    const order = ['Marrow Lane Perry', 'Figure', 'Diameter', 'A small thing.', 'Cut edges are sharp', 'Print check'];
    const places = order.map((text) => tree.indexOf(text));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  const long = 'A title that goes on about pears and casks and old oak '.repeat(10);
  const many = Array.from({ length: 30 }, (_, i) =>
    finding(i < 3 ? 'stop' : 'look', `Fault ${i}: ${'the metal is too thin between these letters, '.repeat(6)}`),
  );
  const wild: [string, Design, ReturnType<typeof plateOf>[]][] = [
    [
      'long texts',
      handDesign({
        title: long,
        order: { who: 'W'.repeat(200), reference: long.slice(0, 200), neededBy: 'x'.repeat(40), notes: long.repeat(7) },
      }),
      [plateOf(500, 'N'.repeat(60))],
    ],
    ['many findings', handDesign(), [plateOf(500, 'Large', many), plateOf(250, 'Half', many)]],
    [
      'torch, four plates',
      handDesign({ stock: { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'torch' } }),
      [560, 280, 140, 70].map((d) => plateOf(d, `Ø ${d}`, many.slice(2, 9))),
    ],
    [
      'twelve plates',
      handDesign(),
      Array.from({ length: 12 }, (_, i) => plateOf(600 - 45 * i, `Cask number ${i}`, many)),
    ],
    [
      'hostile texts',
      handDesign({
        title: 'a\nb\u0000c\ud800 桶🍐 ﷽ Łódź',
        order: { who: '\r\n', reference: '', neededBy: '', notes: '' },
      }),
      [plateOf(300, '桶')],
    ],
    ['no texts', handDesign({ title: '' }), [plateOf(40, 'A')]],
    [
      'unknown stock',
      handDesign({ stock: { material: 'unobtainium', thicknessMm: 3, process: 'teeth', use: 'torch' } }),
      [plateOf(1500, 'A')],
    ],
  ];
  it.each(wild)('keeps everything on the page and nothing over anything: %s', async (_, design, plates) => {
    const read = await readPdf(await sheet(design, ...plates));
    expect(read.pages).toBe(1);
    for (const { text, x, y, width } of read.texts) {
      expect(x, text).toBeGreaterThan(9 * MM);
      expect(x + width, text).toBeLessThan((210 - 9) * MM);
      expect(y, text).toBeGreaterThan(9 * MM);
      expect(y, text).toBeLessThan((297 - 14) * MM);
    }
    for (const [i, a] of read.texts.entries()) {
      for (const b of read.texts.slice(i + 1)) {
        const meet = a.x < b.x + b.width - 0.5 && b.x < a.x + a.width - 0.5 && Math.abs(a.y - b.y) < 5;
        expect(meet, `"${a.text}" lies on "${b.text}"`).toBe(false);
      }
    }
  });

  it('tells the worst first and does not hide a design that is not the approved one', async () => {
    const approval = { name: 'Ada Pell', at: '2027-01-04', how: 'paper' as const, fingerprint: 'ffffffff' };
    const findings = [finding('note', 'A small thing.'), finding('stop', 'A piece falls out.')];
    const read = await readPdf(await sheet(handDesign({ approval }), plateOf(300, 'A', findings)));
    const texts = read.texts.map((t) => t.text);
    expect(texts.some((t) => t.includes('NOT THE APPROVED DESIGN'))).toBe(true);
    expect(texts.some((t) => t.startsWith('Must not be cut'))).toBe(true);
    expect(texts.indexOf('A piece falls out.')).toBeLessThan(texts.indexOf('A small thing.'));
  });

  it('warns of hot work by its documents when a torch is used', async () => {
    const stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'torch' } as const;
    const read = await readPdf(await sheet(handDesign({ stock }), plateOf(300, 'A')));
    const all = read.texts.map((t) => t.text).join(' ');
    for (const document of ['29 CFR 1910.252', 'NFPA 51B', 'NIOSH', '1910.1026', 'Local codes'])
      expect(all).toContain(document);
  });

  const hasPdffonts = spawnSync('pdffonts', ['-v']).error === undefined;
  if (!hasPdffonts)
    console.warn('embedding check skipped: no pdffonts on this machine (apt-get install poppler-utils)');
  it.runIf(hasPdffonts)('embeds its fonts as subsets', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'sheet-'));
    try {
      writeFileSync(join(folder, 'sheet.pdf'), await sheet(handDesign(), plateOf(300, 'A')));
      const rows = spawnSync('pdffonts', [join(folder, 'sheet.pdf')], { encoding: 'utf8' })
        .stdout.trim()
        .split('\n')
        .slice(2);
      expect(rows.length).toBeGreaterThan(0);
      // Columns emb, sub, uni; a subset's name begins with six letters and a plus (ISO 32000-1, 9.6.4).
      for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+.* yes +yes +yes /);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
