import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Whether a tool of poppler-utils or qpdf is on this machine; says once why its checks are skipped. */
export function hasTool(name: 'pdffonts' | 'pdfinfo' | 'pdftoppm' | 'pdftotext' | 'qpdf'): boolean {
  const there = spawnSync(name, [name === 'qpdf' ? '--version' : '-v']).error === undefined;
  if (!there) {
    const from = name === 'qpdf' ? 'qpdf' : 'poppler-utils';
    console.warn(`checks by ${name} skipped: it is not on this machine (apt-get install ${from})`);
  }
  return there;
}

/** What a tool says of a PDF; {} in the arguments stands for the file, and for where else it may write. */
export function askTool(name: string, args: readonly string[], pdf: Uint8Array): { text: string; status: number } {
  return inFolder(pdf, (file) => {
    const ran = spawnSync(
      name,
      args.map((arg) => arg.replace('{}', file)),
      { encoding: 'utf8' },
    );
    return { text: `${ran.stdout}${ran.stderr}`, status: ran.status ?? -1 };
  });
}

/** Names of fonts that are not embedded as subsets (pdffonts: columns emb and sub), and how many fonts there are. */
export function fontsOf(pdf: Uint8Array): { readonly all: number; readonly loose: readonly string[] } {
  const rows = askTool('pdffonts', ['{}'], pdf).text.trim().split('\n').slice(2);
  // A subset's name begins with six letters and a plus (ISO 32000-1, 9.6.4).
  return { all: rows.length, loose: rows.filter((row) => !/^[A-Z]{6}\+.* yes +yes +yes /.test(row)) };
}

export interface PageImage {
  readonly width: number;
  readonly height: number;
  /** RGBA. */
  readonly rgba: Uint8ClampedArray;
}

/** A page as pdftoppm paints it, at so many dots to the inch. */
export function pageImage(pdf: Uint8Array, page: number, dpi: number): PageImage {
  return inFolder(pdf, (file, folder) => {
    const args = ['-r', String(dpi), '-f', String(page), '-l', String(page), '-singlefile', file, join(folder, 'page')];
    spawnSync('pdftoppm', args);
    return readPpm(readFileSync(join(folder, 'page.ppm')));
  });
}

/** Netpbm's P6: a head of three numbers, then three bytes a pixel. */
function readPpm(bytes: Uint8Array): PageImage {
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(new TextDecoder('latin1').decode(bytes.subarray(0, 60)));
  if (!head) throw new Error('no P6 picture');
  const [width, height] = [Number(head[1]), Number(head[2])];
  const rgba = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let i = 0; i < width * height; i++) {
    for (let c = 0; c < 3; c++) rgba[i * 4 + c] = bytes[head[0].length + i * 3 + c] ?? 0;
  }
  return { width, height, rgba };
}

function inFolder<T>(pdf: Uint8Array, ask: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const file = join(folder, 'paper.pdf');
    writeFileSync(file, pdf);
    return ask(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
