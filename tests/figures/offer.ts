import fc from 'fast-check';
import { Decimal } from 'decimal.js';
import { standingOf } from '../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { computeQuote, type Quote } from '../../geometry/shop/quote.ts';
import type { ShopBook } from '../../geometry/shop/shop-book.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { minorDigits } from '../../geometry/stock/money.ts';
import { nextOfferNumber } from '../../web/state/own/offer-numbers.ts';
import { CHANGES } from '../approval/changes-table.ts';
import { PLACES } from '../approval/standing-places.ts';
import { anyOrder, anyShop } from '../shop/worked-quotes.ts';
import { createDesk } from '../web/desks.ts';
import { type Claim, type Measured, once } from './claim.ts';

const ORDERS = 2000;
const NUMBERS = 10_000;
const DESKS = 4;
const STOCK = { material: 'stainless-304', process: 'fibre-laser', thicknessMm: 1.5, use: 'paint' } as const;

async function untold(): Promise<Measured> {
  let [asked, untrue] = [0, 0];
  for (const change of CHANGES) {
    for (const [place, judge] of Object.entries(PLACES)) {
      asked++;
      const wrong = await judge(change);
      if (wrong === undefined) continue;
      untrue++;
      console.error(`${change.name}, ${place}: ${wrong}`);
    }
  }
  return {
    value: `${untrue} of ${asked}`,
    unit: `(${CHANGES.length} changes)`,
    ok: untrue === 0 && CHANGES.length >= 60,
  };
}

interface Sums {
  readonly lines: number;
  readonly wrong: number;
  readonly priced: number;
}

/** Prices as a price list has them: in whole coins, rates to two decimals. */
function inCoins(shop: ShopBook): ShopBook {
  const digits = Math.min(2, minorDigits(shop.currency));
  const text = JSON.stringify(shop, (key, value: unknown) => {
    if (typeof value !== 'number' || key === 'diameterMm') return value;
    return Number(value.toFixed(key === 'percent' || key === 'percentOff' ? 2 : digits));
  });
  return JSON.parse(text) as ShopBook;
}

/** Half a coin goes away from zero, as the shop's book does it. */
function coins(amount: Decimal, currency: string): Decimal {
  return amount.mul(new Decimal(10).pow(minorDigits(currency))).toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
}

/** Lines whose amount is not number times rate as they are shown, and sums that the lines do not give. */
function wrongIn({ lines, currency, netMinor, tax, totalMinor }: Quote): number {
  let work = new Decimal(0);
  let wrong = 0;
  for (const { code, count, unit, each, minor } of lines) {
    const shown = new Decimal(count.toFixed(2));
    const amount = unit === 'per-cent' ? work.mul(shown).div(100).neg() : coins(shown.mul(each), currency);
    const should = unit === 'per-cent' ? amount.toDecimalPlaces(0, Decimal.ROUND_HALF_UP) : amount;
    if (!should.eq(minor)) wrong++;
    if (code !== 'quantity') work = work.plus(minor);
  }
  const sum = lines.reduce((all, { minor }) => all.plus(minor), new Decimal(0));
  const included = tax?.included === true;
  const percent = new Decimal(tax?.percent ?? 0);
  const taxed = included ? sum.mul(percent).div(percent.plus(100)) : sum.mul(percent).div(100);
  if (!taxed.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).eq(tax?.minor ?? 0)) wrong++;
  if (!sum.eq(included || !tax ? totalMinor : netMinor)) wrong++;
  if (!new Decimal(netMinor).plus(tax?.minor ?? 0).eq(totalMinor)) wrong++;
  return wrong;
}

const sums = once((): Promise<Sums> => {
  let [lines, wrong, priced] = [0, 0, 0];
  for (const [shop, plates] of fc.sample(fc.tuple(anyShop(), anyOrder()), { seed: 16, numRuns: 20 * ORDERS })) {
    if (priced === ORDERS) break;
    const quote = computeQuote(inCoins(shop), { stock: STOCK, plates }, BUILT_IN);
    if (!('lines' in quote)) continue;
    priced++;
    lines += quote.lines.length;
    wrong += wrongIn(quote);
  }
  return Promise.resolve({ lines, wrong, priced });
});

async function addUp(): Promise<Measured> {
  const { lines, wrong, priced } = await sums();
  return { value: `${wrong} wrong`, unit: `in ${priced} orders, ${lines} lines`, ok: wrong === 0 && priced === ORDERS };
}

async function numbersTwice(): Promise<Measured> {
  const desks = Array.from({ length: DESKS }, (_, i) => createDesk(27 + i));
  const asked = Array.from({ length: NUMBERS }, (_, i) => nextOfferNumber('2027-01-04', desks[i % DESKS]!));
  const numbers = await Promise.all(asked);
  const twice = numbers.length - new Set(numbers).size;
  return { value: `${twice} twice`, unit: `of ${numbers.length} at ${DESKS} desks`, ok: twice === 0 };
}

/** A design with an approval as each version wrote it, by hand. */
async function olderVersions(): Promise<Measured> {
  const { version: _, offer: __, approval, ...rest } = CHANGES[0]!.design;
  const { name, at, how, fingerprint } = approval!;
  const bare = { ...rest, options: undefined, revisions: undefined, accepted: undefined };
  const files: readonly object[] = [
    { ...bare, version: 1, approval: { name, date: '2027-01-04', fingerprint } },
    { ...bare, version: 2, approval: { name, date: '2027-01-04', fingerprint } },
    { ...rest, version: 3, revisions: undefined, approval: { name, at, how, fingerprint } },
  ];
  const asBefore = files.filter((file) => {
    const read = readDesign(JSON.stringify(file));
    return 'design' in read && isDrawingOnly(read.design);
  });
  return Promise.resolve({
    value: `${asBefore.length} of ${files.length}`,
    unit: 'versions',
    ok: asBefore.length === files.length,
  });
}

function isDrawingOnly(design: Design): boolean {
  const standing = standingOf(design, fingerprintOf(design));
  return standing.kind === 'approved' && standing.order.kind === 'unbound';
}

/** What was agreed on is what is made and charged. */
export const claims: readonly Claim[] = [
  { name: 'untrue-after-a-change', wanted: '0, of 60 changes at every place that says a standing', measure: untold },
  { name: 'lines-that-add-up', wanted: '0 wrong in 2,000 orders, by another library’s decimals', measure: addUp },
  { name: 'numbers-given-twice', wanted: '0 of 10,000 at four desks', measure: numbersTwice },
  { name: 'older-approvals-bind-the-drawing', wanted: 'all versions before', measure: olderVersions },
];
