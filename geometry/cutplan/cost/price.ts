/**
 * What an order costs the shop, line by line: inner costs by the rates of its stock file. What a customer is asked for
 * is made of them by rules of its own. Amounts are whole numbers of the currency's smallest coin; each line is rounded
 * by itself, so the lines that are shown add up to the total that is shown.
 */
import type { Stock } from '../../design/schema.ts';
import type { Nest, NestedSheet } from '../../sheet/sheets.ts';
import { sheetMassKg } from '../../stock/mass.ts';
import { listQuantityOff, type PricedLine, priceLine, sumMinor } from '../../stock/price-line.ts';
import { type Material, materialIn, processIn, type StockBook } from '../../stock/stock-book.ts';

/** So many equal plates of an order. */
export interface PricedPlates {
  readonly diameterMm: number;
  readonly quantity: number;
  /** All contours of one. */
  readonly cuttingMm: number;
}

/** The part of one sheet that an order pays for, and what a whole one costs. */
export interface SheetShare {
  readonly kind: string;
  readonly share: number;
  readonly price: number;
}

export type PriceCode = 'sheet' | 'machine' | 'set-up' | 'preparing' | 'finishing' | 'packing' | 'package' | 'quantity';

export interface PriceLine extends PricedLine<PriceCode, 'sheets' | 'minutes' | 'pieces' | 'per-cent'> {
  /** Kind of sheet; absent for all else. */
  readonly kind?: string;
}

export interface Price {
  readonly currency: string;
  readonly lines: readonly PriceLine[];
  readonly totalMinor: number;
}

export interface PriceAsked {
  readonly plates: readonly PricedPlates[];
  readonly sheets: readonly SheetShare[];
  /** Time of the machine for all plates, set-up left out. */
  readonly machineS: number;
  /** Set-ups: sheets laid down for this order, or its part of one. */
  readonly setUps: number;
}

/** undefined for a process that is not in the book, and for a book without costs, as the public has it. */
export function computePrice(book: StockBook, stock: Stock, asked: PriceAsked): Price | undefined {
  const process = processIn(book, stock.process);
  if (!process) return undefined;
  const { work, currency } = book;
  const { setUpMin, ratePerHour } = process.machine;
  if (!work || !setUpMin || !ratePerHour) return undefined;
  const plates = asked.plates.reduce((sum, p) => sum + p.quantity, 0);
  const cutM = asked.plates.reduce((sum, p) => sum + (p.quantity * p.cuttingMm) / 1000, 0);
  const line = (code: PriceCode, count: number, unit: PriceLine['unit'], each: number): PriceLine =>
    priceLine(code, count, unit, each, currency);
  const machineMinute = ratePerHour.value / 60;
  const handMinute = work.ratePerHour.value / 60;
  const minutes = (code: PriceCode, count: number, each: number) => line(code, count, 'minutes', each);
  const sheets = asked.sheets.map(({ kind, share, price }) => ({ ...line('sheet', share, 'sheets', price), kind }));
  const doing = [
    minutes('preparing', work.preparingMin.value, handMinute),
    minutes('set-up', asked.setUps * setUpMin.value, machineMinute),
    minutes('machine', asked.machineS / 60, machineMinute),
    minutes('finishing', plates * work.finishingMinPerPlate.value + cutM * work.finishingMinPerMetre.value, handMinute),
    minutes('packing', work.packingMinPerOrder.value + plates * work.packingMinPerPlate.value, handMinute),
    line('package', 1, 'pieces', work.packagePerOrder.value + plates * work.packagePerPlate.value),
  ];
  // The sheet costs what it costs: only the work grows cheaper by the number.
  const lines = [...sheets, ...doing, ...listQuantityOff(doing, work.quantitySteps, plates, currency)];
  return { currency, lines, totalMinor: sumMinor(lines) };
}

/**
 * What the plates of some wishes pay for of the sheets they lie on: the sheet with its skeleton, less what goes back on
 * the rack, is shared by area among all plates that lie on it. undefined where the book does not say what they cost.
 */
export function computeSheetShares(
  book: StockBook,
  stock: Stock,
  { sheets, rest }: Pick<Nest, 'sheets' | 'rest'>,
  isOwn: (wish: string) => boolean,
): SheetShare[] | undefined {
  if (!book.work) return undefined;
  const least = book.work.leastRemnantMm.value;
  const shares: SheetShare[] = [];
  for (const [i, sheet] of sheets.entries()) {
    const kept = rest?.sheet === i && Math.min(rest.kind.widthMm, rest.kind.heightMm) >= least ? rest.kind : undefined;
    const whole = sheet.widthMm * sheet.heightMm;
    const used = whole - (kept ? kept.widthMm * kept.heightMm : 0);
    const all = platesMm2(sheet, () => true);
    const own = platesMm2(sheet, isOwn);
    if (own === 0) continue;
    const price = findSheetPrice(book, stock, sheet);
    if (price === undefined) return undefined;
    shares.push({ kind: sheet.kind, share: ((used / whole) * own) / all, price });
  }
  return shares;
}

/**
 * One plate before any sheet is laid out: it pays for the square around it, with half the skeleton's web all round.
 * undefined where no sheet is large enough, or the book does not say what it costs.
 */
export function estimateShare(
  book: StockBook,
  stock: Stock,
  diameterMm: number,
  betweenMm: number,
): SheetShare | undefined {
  const side = diameterMm + betweenMm;
  const sheet = book.sheets.find(
    (s) => (s.materials?.includes(stock.material) ?? true) && Math.min(s.widthMm, s.heightMm) >= side,
  );
  const price = sheet && findSheetPrice(book, stock, { ...sheet, kind: sheet.id });
  if (!sheet || price === undefined) return undefined;
  return { kind: sheet.id, share: (side * side) / (sheet.widthMm * sheet.heightMm), price };
}

/** What a whole sheet costs: as the file says it for this sheet, else its weight at the material's price, if it says one. */
export function findSheetPrice(
  book: StockBook,
  stock: Stock,
  sheet: Pick<NestedSheet, 'kind' | 'widthMm' | 'heightMm'>,
): number | undefined {
  const said = book.sheets
    .find((s) => s.id === sheet.kind)
    ?.prices?.find((p) => p.material === stock.material && p.thicknessMm === stock.thicknessMm);
  if (said) return said.price.value;
  const material: Material | undefined = materialIn(book, stock.material);
  if (!material?.pricePerKg) return undefined;
  const kg = sheetMassKg(sheet.widthMm * sheet.heightMm, stock.thicknessMm, material.densityKgM3.value);
  return kg * material.pricePerKg.value;
}

function platesMm2({ plates }: NestedSheet, isOwn: (wish: string) => boolean): number {
  return plates.reduce((sum, p) => sum + (isOwn(p.wish) ? (Math.PI * p.diameterMm ** 2) / 4 : 0), 0);
}
