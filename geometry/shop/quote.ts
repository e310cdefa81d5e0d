/**
 * What a customer is asked for, line by line, by the shop's list prices. Amounts are whole numbers of the currency's
 * smallest coin; each line is rounded by itself, and the tax once, so what is shown adds up. Where no list price fits
 * there is no number at all.
 */
import type { Offer, Stock } from '../design/schema.ts';
import { toMinor } from '../stock/money.ts';
import { listQuantityOff, type PricedLine, priceLine, type QuantityStep, sumMinor } from '../stock/price-line.ts';
import { materialWords, processWords } from '../stock/record-key.ts';
import { materialIn, processIn, type StockBook } from '../stock/stock-book.ts';
import { GRID_MM } from '../units.ts';
import { inMm, named } from '../sentences/say.ts';
import { SHOP_EN } from '../sentences/shop-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { Refused, WordValues } from '../sentences/wording.ts';
import type { ShopBook, ShopPrices } from './shop-book.ts';

/** So many equal plates of an order. */
export interface QuotePlates {
  /** Unlike that of the others. */
  readonly name: string;
  readonly diameterMm: number;
  /** Whole; plates of which none is wanted are left out. */
  readonly quantity: number;
  /** All contours of one, its rim included. */
  readonly cuttingMm: number;
  /** Of one. */
  readonly openings: number;
  readonly rolled?: boolean;
  /** A ring that masks what lies beside another plate: no list price is meant for it. */
  readonly masks?: boolean;
}

export interface QuoteAsked {
  readonly stock: Stock;
  readonly plates: readonly QuotePlates[];
  /** Different designs in the order; absent: one. */
  readonly designs?: number;
}

export type QuoteCode = NonNullable<Offer['price']>['lines'][number]['code'];

export interface QuoteLine extends PricedLine<QuoteCode, 'pieces' | 'metres' | 'per-cent'> {
  /** Name of the plates it is for; absent where it is for all. */
  readonly plate?: string;
}

export interface QuoteTax {
  readonly name: string;
  readonly percent: number;
  readonly minor: number;
  /** The lines hold it; else it comes on top of them. */
  readonly included: boolean;
}

export interface Quote {
  readonly currency: string;
  readonly lines: readonly QuoteLine[];
  /** Without tax. The sum of the lines where there is none or it is added. */
  readonly netMinor: number;
  readonly tax?: QuoteTax;
  /** What is paid: netMinor and the tax. The sum of the lines where the tax is included. */
  readonly totalMinor: number;
  /** Fewest plates first. */
  readonly steps: readonly QuantityStep[];
  /** Working days; absent where the shop says none. */
  readonly lead?: { readonly least: number; readonly most: number };
  readonly validDays?: number;
}

/** More coins than this cannot be counted without an error of rounding. */
const MOST_MINOR = 1e11;

/**
 * The price of an order. `book` is the stock its material and process are named from. A refusal says that the price is on
 * request, and why. Throws a RangeError where a plate is no plate (a programmer's mistake).
 */
export function computeQuote(shop: ShopBook, asked: QuoteAsked, book: StockBook): Quote | Refused {
  asked.plates.forEach(mustBePlates);
  const wanted = asked.plates.filter((p) => p.quantity > 0);
  const refuse = refuserFor(shop, asked.stock, book);
  if (wanted.length === 0) return refuse('quote.nothing');
  if (!shop.prices) return refuse('quote.pricesUnlisted');
  const work = workLines(shop.prices, shop.currency, asked.stock, wanted, refuse);
  if ('problem' in work) return work;
  const plates = wanted.reduce((sum, p) => sum + p.quantity, 0);
  const lines = [...work, ...orderLines(shop.prices, shop.currency, work, plates, asked.designs ?? 1)];
  const short = toMinor(shop.prices.leastOrder?.amount ?? 0, shop.currency) - sumMinor(lines);
  if (short > 0) lines.push(priceLine('least-order', 1, 'pieces', major(short, shop.currency), shop.currency));
  if (lines.some(({ minor }) => Math.abs(minor) > MOST_MINOR) || sumMinor(lines) > MOST_MINOR) {
    return refuse('quote.tooMuch');
  }
  return {
    currency: shop.currency,
    lines,
    ...withTax(sumMinor(lines), shop.tax),
    steps: [...(shop.prices.quantitySteps ?? [])].sort((a, b) => a.from - b.from),
    ...(shop.leadTime && { lead: leadOf(shop.leadTime, plates) }),
    ...(shop.offer && { validDays: shop.offer.validDays }),
  };
}

type Refuse = (key: Extract<KeyOf<typeof SHOP_EN>, `quote.${string}`>, values?: WordValues) => Refused;

/** What grows with the plates, and what the quantity makes cheaper. */
function workLines(
  prices: ShopPrices,
  currency: string,
  stock: Stock,
  wanted: readonly QuotePlates[],
  refuse: Refuse,
): QuoteLine[] | Refused {
  const ofPlates = prices.plates.find((rule) => countsFor(rule, stock));
  if (!ofPlates) return refuse('quote.plateUnlisted');
  const ofCutting = prices.cutting?.find((rule) => countsFor(rule, stock));
  if (prices.cutting && prices.cutting.length > 0 && !ofCutting) return refuse('quote.cuttingUnlisted');
  const lines: QuoteLine[] = [];
  for (const { name, diameterMm, quantity, cuttingMm, openings, rolled, masks } of wanted) {
    if (masks) return refuse('quote.maskUnlisted', { plate: name });
    const add = (code: QuoteCode, count: number, unit: QuoteLine['unit'], each: number): void => {
      lines.push({ ...priceLine(code, count, unit, each, currency), plate: name });
    };
    const row = ofPlates.upTo.find((r) => diameterMm <= r.diameterMm + GRID_MM);
    if (!row) {
      const most = inMm(Math.max(...ofPlates.upTo.map((r) => r.diameterMm)));
      return refuse('quote.plateLarge', { plate: name, diameter: inMm(diameterMm), most });
    }
    add('plate', quantity, 'pieces', row.each);
    // Rounded as it is shown, so that every line multiplies.
    if (ofCutting) add('cutting', Math.round((quantity * cuttingMm) / 10) / 100, 'metres', ofCutting.perMetre);
    if (ofCutting?.perOpening !== undefined) add('openings', quantity * openings, 'pieces', ofCutting.perOpening);
    if (rolled && !prices.rolling) return refuse('quote.rollingUnlisted', { plate: name });
    if (rolled && prices.rolling) add('rolling', quantity, 'pieces', prices.rolling.perPlate);
    if (prices.finishing) add('finishing', quantity, 'pieces', prices.finishing.perPlate);
  }
  return lines;
}

/** What is asked once, and what the quantity takes off the work. */
function orderLines(
  { quantitySteps = [], design, packing }: ShopPrices,
  currency: string,
  work: readonly QuoteLine[],
  plates: number,
  designs: number,
): QuoteLine[] {
  const line = (code: QuoteCode, count: number, each: number) => priceLine(code, count, 'pieces', each, currency);
  return [
    ...listQuantityOff(work, quantitySteps, plates, currency),
    ...(design ? [line('design', designs, design.each)] : []),
    ...(packing ? [line('packing', 1, packing.perOrder)] : []),
    ...(packing?.perPlate !== undefined ? [line('packing-plates', plates, packing.perPlate)] : []),
  ];
}

function countsFor(rule: ShopPrices['plates'][number] | NonNullable<ShopPrices['cutting']>[number], stock: Stock) {
  const { materials, processes, thicknessMm } = rule;
  const { least = 0, most = Infinity } = thicknessMm ?? {};
  return (
    (materials?.includes(stock.material) ?? true) &&
    (processes?.includes(stock.process) ?? true) &&
    stock.thicknessMm >= least - GRID_MM &&
    stock.thicknessMm <= most + GRID_MM
  );
}

function withTax(sum: number, tax: ShopBook['tax']): Pick<Quote, 'netMinor' | 'tax' | 'totalMinor'> {
  if (!tax) return { netMinor: sum, totalMinor: sum };
  // Coins are whole numbers here, so a currency without decimals rounds them as any other's.
  const minor = wholeCoins(tax.included ? (sum * tax.percent) / (100 + tax.percent) : (sum * tax.percent) / 100);
  return tax.included
    ? { netMinor: sum - minor, tax: { ...tax, minor }, totalMinor: sum }
    : { netMinor: sum, tax: { ...tax, minor }, totalMinor: sum + minor };
}

/** A day makes platesADay: every further day's worth adds one. */
function leadOf(
  { least, most, platesADay }: NonNullable<ShopBook['leadTime']>,
  plates: number,
): NonNullable<Quote['lead']> {
  const further = platesADay === undefined ? 0 : Math.ceil(plates / platesADay) - 1;
  return { least: least + further, most: most + further };
}

/** Coins as an amount of the currency. */
function major(minor: number, currency: string): number {
  return minor / toMinor(1, currency);
}

/** Halves away from zero; twelve digits, as an amount is made coins. */
function wholeCoins(coins: number): number {
  return toMinor(coins, 'JPY');
}

function mustBePlates({ name, diameterMm, quantity, cuttingMm, openings }: QuotePlates): void {
  const counted = [quantity, openings].every((n) => Number.isSafeInteger(n) && n >= 0);
  if (!counted || !(diameterMm > 0 && cuttingMm >= 0) || !Number.isFinite(diameterMm + cuttingMm)) {
    throw new RangeError(`No plates to price: ${name}`);
  }
}

function refuserFor(shop: ShopBook, stock: Stock, book: StockBook): Refuse {
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const all: WordValues = {
    shop: shop.name,
    thickness: inMm(stock.thicknessMm, 2),
    material: material ? materialWords(material) : named('', stock.material),
    process: process ? processWords(process) : named('', stock.process),
  };
  return (key, values = {}) => SHOP_EN.refused(key, { ...all, ...values });
}
