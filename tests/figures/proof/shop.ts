import fc from 'fast-check';
import { computeQuote } from '../../../geometry/shop/quote.ts';
import { readShop } from '../../../geometry/shop/read-shop.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { marksLeft } from '../../shop/inner-numbers.ts';
import { SPOILED_FILES } from '../../shop/spoiled-files.ts';
import { anyOrder, anyShop, cameOutAs, linesAddUp, WORKED } from '../../shop/worked-quotes.ts';
import type { Claim } from '../claim.ts';

const STOCK = { material: 'stainless-304', process: 'fibre-laser', thicknessMm: 1.5, use: 'paint' } as const;

/** The shop's own file and the customer's price. */
export const SHOP_CLAIMS: readonly Claim[] = [
  {
    name: 'prices-worked-by-hand',
    wanted: `${WORKED.length} of ${WORKED.length} orders to the coin, in EUR, JPY and KWD, tax included and added`,
    measure: () => {
      const right = WORKED.filter(
        (example) =>
          JSON.stringify(cameOutAs(computeQuote(example.shop, example.asked, BUILT_IN))) ===
          JSON.stringify(cameOutAs(example)),
      );
      return Promise.resolve({ value: right.length, unit: 'orders', ok: right.length === WORKED.length });
    },
  },
  {
    name: 'price-lines-add-up',
    wanted: '0 of 2000 seeded orders whose lines, tax and total do not add up to the coin',
    measure: () => {
      const [shops, orders] = [
        fc.sample(anyShop(), { numRuns: 2000, seed: 21 }),
        fc.sample(anyOrder(), { numRuns: 2000, seed: 22 }),
      ];
      const quotes = shops.map((shop, i) => computeQuote(shop, { stock: STOCK, plates: orders[i] ?? [] }, BUILT_IN));
      const priced = quotes.flatMap((quote) => ('problem' in quote ? [] : [quote]));
      const wrong = priced.filter((quote) => !linesAddUp(quote)).length;
      // Those of nothing, or of more than can be counted, have no price.
      return Promise.resolve({
        value: wrong,
        unit: 'orders',
        ok: wrong === 0 && priced.length > 1500,
      });
    },
  },
  {
    name: 'published-without-costs',
    wanted: '0 of the inner numbers and words of both files in what is published',
    measure: () => {
      const { of, left } = marksLeft();
      return Promise.resolve({ value: `${left.length} of ${of}`, unit: '', ok: left.length === 0 && of > 80 });
    },
  },
  {
    name: 'shop-file-faults-by-line',
    wanted: `${SPOILED_FILES.length} of ${SPOILED_FILES.length} spoiled files told with the right line and part`,
    measure: () => {
      const told = SPOILED_FILES.filter(({ text, line, says }) => {
        const read = readShop(text);
        return 'problem' in read && read.problem.startsWith(`Line ${line}: `) && says.test(read.problem);
      }).length;
      return Promise.resolve({ value: told, unit: 'files', ok: told === SPOILED_FILES.length });
    },
  },
];
