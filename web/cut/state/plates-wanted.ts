import { gapsAtLeast, gapsFor, leastGapsFor, sheetKindsFor } from '../../../geometry/cutplan/cost/settings-for.ts';
import type { Design, Stock } from '../../../geometry/design/schema.ts';
import type { NestGaps, PlateWish, SheetKind, NestedSheet } from '../../../geometry/sheet/sheets.ts';
import { processIn, type StockBook } from '../../../geometry/stock/stock-book.ts';
import type { CutPlate } from '../../worker/cut-api.ts';
import type { CutState, OrderItem } from './cut-store.ts';

/** What all sheets of an order are of: the stock of its first design. */
export function stockOf({ items }: Pick<CutState, 'items'>): Stock | undefined {
  return items[0]?.design.stock;
}

/** One sheet is of one material and thickness, and cut by one process. */
export function isSameStock(a: Stock, b: Stock): boolean {
  return a.material === b.material && a.thicknessMm === b.thicknessMm && a.process === b.process;
}

export function countOf(item: OrderItem, plateId: string): number {
  return item.counts[plateId] ?? item.design.plates.find((p) => p.id === plateId)?.quantity ?? 0;
}

/** May be placed and cut: nothing stops it, and it is of the order's stock. */
function isFit(plate: CutPlate, item: OrderItem, stock: Stock): boolean {
  return plate.verdict !== 'stop' && isSameStock(item.design.stock, stock);
}

export function wishesOf({ items, plates }: Pick<CutState, 'items' | 'plates'>): PlateWish[] {
  const stock = items[0]?.design.stock;
  if (!stock) return [];
  return plates.flatMap((plate) => {
    const item = items.find(({ key }) => key === plate.key);
    if (!item || !isFit(plate, item, stock)) return [];
    const quantity = countOf(item, plate.plateId);
    if (quantity <= 0) return [];
    const { wish, diameterMm, waste } = plate;
    return [{ id: wish, diameterMm, quantity, ...(waste.length > 0 && { waste }) }];
  });
}

/** What sheets are taken from: those chosen, else the first; and the remnants. */
export function kindsOf(state: Pick<CutState, 'items' | 'kindIds' | 'remnants'>, book: StockBook): SheetKind[] {
  const stock = stockOf(state);
  if (!stock) return [];
  const all = sheetKindsFor(book, stock);
  const chosen = state.kindIds === undefined ? all.slice(0, 1) : all.filter(({ id }) => state.kindIds?.includes(id));
  return [...chosen, ...state.remnants];
}

/** What the process asks to be left, or what the person typed; never less than kerf, lead-ins and heat ask for. */
export function gapsOf({ items, ownGaps }: Pick<CutState, 'items' | 'ownGaps'>, book: StockBook): NestGaps {
  const process = processIn(book, items[0]?.design.stock.process ?? '');
  return gapsAtLeast({ ...(process ? gapsFor(process) : NO_PROCESS), ...ownGaps }, leastGapsOf({ items }, book));
}

/** Less than this no two plates may lie apart, nor a plate from the edge. */
export function leastGapsOf({ items }: Pick<CutState, 'items'>, book: StockBook): NestGaps {
  const stock = stockOf({ items });
  const process = stock && processIn(book, stock.process);
  return process ? leastGapsFor(process, stock.thicknessMm) : NO_PROCESS;
}

/** Until the design's process is one of the shop's. */
const NO_PROCESS: NestGaps = { betweenMm: 5, edgeMm: 10 };

/** Sheets that lie alike: the same plates in the same places. */
export function alikeAs(sheets: readonly NestedSheet[], at: number): number {
  const key = sheets[at] && layOf(sheets[at]);
  return sheets.filter((sheet) => layOf(sheet) === key).length - 1;
}

function layOf({ widthMm, heightMm, gone, plates }: NestedSheet): string {
  return JSON.stringify([widthMm, heightMm, gone, plates.map((p) => [p.wish, p.x, p.y, p.turnDeg])]);
}

/** The first letter that is free: A to Z, then AA. */
export function freeKey(items: readonly Pick<OrderItem, 'key'>[]): string {
  const taken = new Set(items.map(({ key }) => key));
  for (let n = 0; ; n++) {
    const key = n < 26 ? letter(n) : letter(Math.floor(n / 26) - 1) + letter(n % 26);
    if (!taken.has(key)) return key;
  }
}

function letter(n: number): string {
  return String.fromCharCode(65 + n);
}

export function titleOf(design: Design): string {
  return design.title.trim();
}
