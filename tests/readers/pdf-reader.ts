import type { PDFPageProxy } from 'pdfjs-dist';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One page of a PDF. */
export interface PdfPageRead {
  /** Points, 1/72 in. */
  readonly size: readonly [number, number];
  /** Every run of text with its place in points from the lower left corner, and its width. */
  readonly texts: readonly { readonly text: string; readonly x: number; readonly y: number; readonly width: number }[];
  /** Boxes of all painted paths, in points on the page. */
  readonly boxes: readonly PathBox[];
}

export interface PathBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface PdfRead extends PdfPageRead {
  readonly pages: number;
  readonly title: string;
  readonly lang: string | undefined;
}

/** Reads the first page of a PDF with pdf.js. */
export async function readPdf(bytes: Uint8Array): Promise<PdfRead> {
  const { title, lang, pages } = await readAllPages(bytes, 1);
  return { pages: pages.length, title, lang, ...pages[0]! };
}

/** Reads every page, or what is asked of the first ones only. */
export async function readAllPages(
  bytes: Uint8Array,
  most = Infinity,
): Promise<{ readonly title: string; readonly lang: string | undefined; readonly pages: readonly PdfPageRead[] }> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const pdf = await task.promise;
  const meta = await pdf.getMetadata();
  const info = meta.info as { Title?: string; Language?: string };
  const pages: PdfPageRead[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    pages.push(number <= most ? await readPage(await pdf.getPage(number)) : NOT_READ);
  }
  await task.destroy();
  return { title: info.Title ?? '', lang: info.Language, pages };
}

const NOT_READ: PdfPageRead = { size: [0, 0], texts: [], boxes: [] };

async function readPage(page: PDFPageProxy): Promise<PdfPageRead> {
  const [x0, y0, x1, y1] = page.view as [number, number, number, number];
  const content = await page.getTextContent();
  return {
    size: [x1 - x0, y1 - y0],
    texts: content.items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str, x: item.transform[4] as number, y: item.transform[5] as number, width: item.width }]
        : [],
    ),
    boxes: pathBoxes(await page.getOperatorList()),
  };
}

type Matrix = readonly [number, number, number, number, number, number];

/** Walks save, restore and transform, and puts the box that pdf.js gives with each path through the matrix. */
function pathBoxes(list: { fnArray: number[]; argsArray: unknown[] }): readonly PathBox[] {
  const boxes: { minX: number; minY: number; maxX: number; maxY: number }[] = [];
  const stack: Matrix[] = [];
  let m: Matrix = [1, 0, 0, 1, 0, 0];
  list.fnArray.forEach((fn, i) => {
    if (fn === OPS.save) stack.push(m);
    else if (fn === OPS.restore) m = stack.pop() ?? m;
    else if (fn === OPS.transform) m = times(m, list.argsArray[i] as Matrix);
    else if (fn === OPS.constructPath) {
      const box = (list.argsArray[i] as [unknown, unknown, ArrayLike<number> | null])[2];
      if (!box) return;
      const corners = [
        [box[0]!, box[1]!],
        [box[2]!, box[3]!],
      ].map(([x, y]) => [m[0] * x! + m[2] * y! + m[4], m[1] * x! + m[3] * y! + m[5]] as const);
      const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
      boxes.push({ minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) });
    }
  });
  return boxes;
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ];
}
