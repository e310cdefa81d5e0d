import fc from 'fast-check';
import { STARTING_SHOP } from '../../geometry/shop/built-in-shop.ts';
import type { Quote, QuoteAsked, QuotePlates } from '../../geometry/shop/quote.ts';
import type { Refused } from '../../geometry/sentences/wording.ts';
import type { ShopBook } from '../../geometry/shop/shop-book.ts';

const STOCK = { material: 'stainless-304', process: 'fibre-laser', thicknessMm: 1.5, use: 'paint' } as const;

/** An order worked out with pencil and paper; amounts in coins. */
export interface WorkedQuote {
  readonly what: string;
  readonly shop: ShopBook;
  readonly asked: QuoteAsked;
  /** Plate, code and amount of every line. */
  readonly minors: readonly (readonly [string, string, number])[];
  readonly netMinor: number;
  readonly taxMinor: number;
  readonly totalMinor: number;
}

const one: QuotePlates = { name: 'one', diameterMm: 500, quantity: 1, cuttingMm: 0, openings: 0 };

/** A shop that only asks for the plate. */
function plain(currency: string, each: number, tax: ShopBook['tax']): ShopBook {
  const { name, address, contact, legal, pages, pageSize } = STARTING_SHOP;
  const prices = { plates: [{ upTo: [{ diameterMm: 600, each }] }] };
  return { name, address, contact, legal, pages, pageSize, currency, prices, ...(tax && { tax }) };
}

export const WORKED: readonly WorkedQuote[] = [
  {
    what: 'euros, two kinds of plates, one rolled, five per cent off, tax added',
    shop: STARTING_SHOP,
    asked: {
      stock: STOCK,
      plates: [
        { name: 'large', diameterMm: 500, quantity: 3, cuttingMm: 12_345.6, openings: 40 },
        { name: 'small', diameterMm: 250, quantity: 2, cuttingMm: 6000, openings: 25, rolled: true },
      ],
    },
    minors: [
      ['large', 'plate', 174_00], // 3 x 58
      ['large', 'cutting', 66_67], // 3 x 12.3456 m = 37.0368 m, x 1.80 = 66.66624
      ['large', 'openings', 6_00], // 3 x 40 x 0.05
      ['large', 'finishing', 18_00], // 3 x 6
      ['small', 'plate', 48_00], // 2 x 24: 250 mm is still the first row
      ['small', 'cutting', 21_60], // 2 x 6 m x 1.80
      ['small', 'openings', 2_50], // 2 x 25 x 0.05
      ['small', 'rolling', 36_00], // 2 x 18
      ['small', 'finishing', 12_00], // 2 x 6
      ['', 'quantity', -19_24], // 5 plates: 5 % of 384.77 = 19.2385
      ['', 'design', 15_00],
      ['', 'packing', 9_50],
      ['', 'packing-plates', 7_50], // 5 x 1.50
    ],
    netMinor: 397_53, // 384.77 - 19.24 + 15 + 9.50 + 7.50
    taxMinor: 79_51, // 20 % of 397.53 = 79.506
    totalMinor: 477_04,
  },
  {
    what: 'euros, tax of 19 per cent included',
    shop: plain('EUR', 119, { name: 'MwSt.', percent: 19, included: true }),
    asked: { stock: STOCK, plates: [one] },
    minors: [['one', 'plate', 119_00]],
    netMinor: 100_00, // 119 / 1.19
    taxMinor: 19_00,
    totalMinor: 119_00,
  },
  {
    what: 'euros, tax of 7 per cent included that comes out in fractions',
    shop: plain('EUR', 10, { name: 'MwSt.', percent: 7, included: true }),
    asked: { stock: STOCK, plates: [one] },
    minors: [['one', 'plate', 10_00]],
    netMinor: 9_35,
    taxMinor: 65, // 10 x 7 / 107 = 0.6542
    totalMinor: 10_00,
  },
  {
    what: 'yen, which have no smaller coin, halves away from zero',
    shop: plain('JPY', 1234.5, { name: 'tax', percent: 10, included: false }),
    asked: { stock: STOCK, plates: [one] },
    minors: [['one', 'plate', 1235]],
    netMinor: 1235,
    taxMinor: 124, // 123.5
    totalMinor: 1359,
  },
  {
    what: 'Kuwaiti dinars, of a thousand fils',
    shop: plain('KWD', 1.2345, { name: 'tax', percent: 5, included: false }),
    asked: { stock: STOCK, plates: [{ ...one, quantity: 3 }] },
    minors: [['one', 'plate', 3704]], // 3 x 1.2345 = 3.7035, half a fils up
    netMinor: 3704,
    taxMinor: 185, // 185.2
    totalMinor: 3889,
  },
  {
    what: 'no tax at all, two designs',
    shop: (({ tax: _, ...shop }) => shop)(STARTING_SHOP),
    asked: {
      stock: { ...STOCK, material: 'mild-steel', process: 'plasma', thicknessMm: 3 },
      plates: [{ ...one, cuttingMm: 1000, openings: 1 }],
      designs: 2,
    },
    minors: [
      ['one', 'plate', 50_00],
      ['one', 'cutting', 2_20],
      ['one', 'openings', 10],
      ['one', 'finishing', 6_00],
      ['', 'design', 30_00],
      ['', 'packing', 9_50],
      ['', 'packing-plates', 1_50],
    ],
    netMinor: 99_30,
    taxMinor: 0,
    totalMinor: 99_30,
  },
];

/** The amounts of a quote, or of an example, in one form. */
export function cameOutAs(quote: Quote | WorkedQuote | Refused): unknown {
  if ('problem' in quote) return quote.problem;
  const { netMinor, totalMinor } = quote;
  return 'minors' in quote
    ? { lines: quote.minors, netMinor, taxMinor: quote.taxMinor, totalMinor }
    : {
        lines: quote.lines.map((l) => [l.plate ?? '', l.code, l.minor]),
        netMinor,
        taxMinor: quote.tax?.minor ?? 0,
        totalMinor,
      };
}

/** What is shown adds up to the coin, and every amount is whole. */
export function linesAddUp({ lines, netMinor, tax, totalMinor }: Quote): boolean {
  const sum = lines.reduce((all, l) => all + l.minor, 0);
  const whole = [...lines.map((l) => l.minor), netMinor, tax?.minor ?? 0, totalMinor].every(Number.isSafeInteger);
  return whole && netMinor + (tax?.minor ?? 0) === totalMinor && sum === (tax?.included ? totalMinor : netMinor);
}

const money = fc.double({ min: 0, max: 900, noNaN: true });

/** A shop with prices of its own for whatever is cut. */
export function anyShop(): fc.Arbitrary<ShopBook> {
  return fc
    .record({
      each: money,
      perMetre: money,
      perOpening: money,
      perPlate: money,
      design: money,
      least: money,
      currency: fc.constantFrom('EUR', 'JPY', 'KWD', 'USD'),
      tax: fc.option(
        fc.record({
          name: fc.constant('tax'),
          percent: fc.double({ min: 0, max: 100, noNaN: true }),
          included: fc.boolean(),
        }),
        { nil: undefined },
      ),
      off: fc.double({ min: 0, max: 90, noNaN: true }),
    })
    .map(({ each, perMetre, perOpening, perPlate, design, least, currency, tax, off }) => ({
      ...plain(currency, each, tax),
      prices: {
        plates: [{ upTo: [{ diameterMm: 1500, each }] }],
        cutting: [{ perMetre, perOpening }],
        finishing: { perPlate },
        rolling: { perPlate: each },
        design: { each: design },
        packing: { perOrder: perPlate, perPlate },
        quantitySteps: [{ from: 3, percentOff: off }],
        leastOrder: { amount: least },
      },
    }));
}

export function anyOrder(): fc.Arbitrary<QuotePlates[]> {
  return fc.array(
    fc.record({
      name: fc.string({ maxLength: 5 }),
      diameterMm: fc.double({ min: 40, max: 1500, noNaN: true }),
      quantity: fc.integer({ min: 0, max: 500 }),
      cuttingMm: fc.double({ min: 0, max: 1e5, noNaN: true }),
      openings: fc.integer({ min: 0, max: 2000 }),
      rolled: fc.boolean(),
    }),
    { maxLength: 6 },
  );
}
