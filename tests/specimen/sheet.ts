import { FACES } from '../../fonts/catalogue.ts';
import { loadFace } from '../../fonts/node-faces.ts';
import type { Manner, Stock } from '../../geometry/design/schema.ts';
import { joinBoxes, ringBox } from '../../geometry/measure/ring.ts';
import type { Region } from '../../geometry/shapes.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { lineStore, pathData, setLine } from './set-line.ts';

/** Sheet of all manners side by side: openings black on paper, so that every bridge shows as paper. All lengths mm. */

const STOCK: Stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' };
const CAP_MM = 40;
export const TEXT = 'ABDOPQRabdego04689&';

const MANNERS: readonly { readonly manner: Manner; readonly title: string; readonly says: string }[] = [
  { manner: 'hidden', title: 'Hidden', says: 'short bars in the thin strokes' },
  { manner: 'upright', title: 'Upright', says: 'bars that stand, through the letter' },
  { manner: 'band', title: 'Band', says: 'one broad bar' },
];

const [PAPER, CHAR, HOOP, COPPER] = ['#f6f2e9', '#221e1a', '#6f6a63', '#a8622d'];
const [MARGIN, HEAD, NAME, ROW, GAP] = [34, 96, 17, 82, 40];
const LETTERS = "'Source Sans 3', 'DejaVu Sans', sans-serif";

export interface SheetWish {
  readonly faces: readonly string[];
  readonly manners: readonly Manner[];
  readonly text: string;
  /** Columns of faces, for a sheet of one manner; several manners take a column each. */
  readonly columns: number;
  readonly title: string;
}

interface Cell {
  readonly name: string;
  readonly path: string;
  readonly left: number;
  readonly width: number;
}

export async function specimenSvg(wish: SheetWish): Promise<string> {
  const columns = MANNERS.filter(({ manner }) => wish.manners.includes(manner));
  const cells: Cell[][] = [];
  for (const { manner } of columns) {
    const column: Cell[] = [];
    for (const face of wish.faces) column.push(await cell(face, wish.text, manner));
    cells.push(column);
  }
  const one = columns.length === 1;
  const placed = one ? inColumns(cells[0] ?? [], wish.columns) : cells;
  const rows = Math.max(...placed.map((column) => column.length));
  const widths = placed.map((column) => Math.max(...column.map((c) => c.width)));
  const width = 2 * MARGIN + widths.reduce((a, b) => a + b, 0) + GAP * (placed.length - 1);
  const height = HEAD + rows * (ROW + NAME) + MARGIN;
  const out = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}">`,
    `<rect width="${n(width)}" height="${n(height)}" fill="${PAPER}"/>`,
    words(MARGIN, 40, 22, CHAR, wish.title, 700),
    words(
      MARGIN,
      58,
      11,
      HOOP,
      `Capitals ${CAP_MM} mm, ${STOCK.thicknessMm} mm stainless steel by fibre laser, every bridge as it is cut`,
    ),
  ];
  let x = MARGIN;
  placed.forEach((column, i) => {
    const manner = columns[one ? 0 : i];
    if (manner && (!one || i === 0)) {
      out.push(words(x, 82, 15, COPPER, manner.title, 700));
      out.push(words(x + 9.5 * manner.title.length + 6, 82, 11, HOOP, manner.says));
    }
    out.push(`<path d="M${n(x)} ${HEAD - 6}H${n(x + widths[i]!)}" stroke="${HOOP}" stroke-width="0.4"/>`);
    column.forEach((c, row) => {
      const y = HEAD + row * (ROW + NAME);
      out.push(words(x, y + 8, 9, HOOP, c.name));
      out.push(
        `<path transform="translate(${n(x - c.left)} ${n(y + NAME + 34)})" d="${c.path}" fill="${CHAR}" fill-rule="evenodd"/>`,
      );
    });
    x += widths[i]! + GAP;
  });
  return [...out, '</svg>', ''].join('\n');
}

export function allFaces(): string[] {
  return FACES.map(({ id }) => id);
}

async function cell(faceId: string, text: string, manner: Manner): Promise<Cell> {
  const loaded = await loadFace(faceId);
  if ('problem' in loaded) throw new Error(loaded.problem);
  const has = [...text].filter((char) => loaded.face.glyph(char)).join('');
  const { openings } = await setLine(
    faceId,
    has,
    CAP_MM,
    stockRules(STOCK, 'auto', BUILT_IN).rules,
    manner,
    lineStore(),
  );
  const box = joinBoxes(openings.map((r: Region) => ringBox(r.outer)));
  const name = FACES.find(({ id }) => id === faceId)?.name ?? faceId;
  return { name, path: pathData(openings), left: box.minX, width: box.maxX - box.minX };
}

function inColumns(cells: readonly Cell[], columns: number): Cell[][] {
  const rows = Math.ceil(cells.length / columns);
  return Array.from({ length: columns }, (_, i) => cells.slice(i * rows, (i + 1) * rows)).filter((c) => c.length > 0);
}

function words(x: number, y: number, size: number, fill: string, text: string, weight = 400): string {
  const safe = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<text x="${n(x)}" y="${n(y)}" font-family="${LETTERS}" font-size="${size}" font-weight="${weight}" fill="${fill}">${safe}</text>`;
}

function n(v: number): string {
  return `${Number(v.toFixed(2))}`;
}
