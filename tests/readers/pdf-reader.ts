import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfRead {
  readonly pages: number;
  /** Points, 1/72 in. */
  readonly size: readonly [number, number];
  readonly title: string;
  readonly lang: string | undefined;
  /** Every run of text with its place in points from the lower left corner, and its width. */
  readonly texts: readonly { readonly text: string; readonly x: number; readonly y: number; readonly width: number }[];
  /** Boxes of all painted paths, in points on the page. */
  readonly boxes: readonly {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  }[];
}

/** Reads the first page of a PDF with pdf.js. */
export async function readPdf(bytes: Uint8Array): Promise<PdfRead> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const pdf = await task.promise;
  const page = await pdf.getPage(1);
  const [x0, y0, x1, y1] = page.view as [number, number, number, number];
  const content = await page.getTextContent();
  const meta = await pdf.getMetadata();
  const info = meta.info as { Title?: string; Language?: string };
  const read: PdfRead = {
    pages: pdf.numPages,
    size: [x1 - x0, y1 - y0],
    title: info.Title ?? '',
    lang: info.Language,
    texts: content.items.flatMap((item) =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str, x: item.transform[4] as number, y: item.transform[5] as number, width: item.width }]
        : [],
    ),
    boxes: pathBoxes(await page.getOperatorList()),
  };
  await task.destroy();
  return read;
}

type Matrix = readonly [number, number, number, number, number, number];

/** Walks save, restore and transform, and puts the box that pdf.js gives with each path through the matrix. */
function pathBoxes(list: { fnArray: number[]; argsArray: unknown[] }): PdfRead['boxes'] {
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
