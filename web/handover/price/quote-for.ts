import type { Design } from '../../../geometry/design/schema.ts';
import { computeQuote, type Quote } from '../../../geometry/shop/quote.ts';
import type { ShopBook } from '../../../geometry/shop/shop-book.ts';
import type { StockBook } from '../../../geometry/stock/stock-book.ts';
import type { Refused } from '../../../geometry/sentences/wording.ts';
import type { PlannedPlate } from '../../worker/plate-api.ts';

/** The shop's price for a design whose plates are planned, or why it is on request. */
export function quoteFor(
  shop: ShopBook,
  book: StockBook,
  { stock, surface, plates: specs }: Design,
  planned: readonly PlannedPlate[],
): Quote | Refused {
  const names = new Set<string>();
  const plates = planned.map(({ plate, cuttingMm, openings }) => {
    const { diameterMm, quantity } = plate;
    const rolled = surface !== 'head';
    const masks = specs.find(({ id }) => id === plate.plateId)?.masks !== undefined;
    const name = nameApart(names, plate.name);
    return { name, diameterMm, quantity, cuttingMm, openings, ...(rolled && { rolled }), ...(masks && { masks }) };
  });
  return computeQuote(shop, { stock, plates }, book);
}

/** Two plates may be called the same; lines of a price may not. */
function nameApart(names: Set<string>, name: string): string {
  let tried = name;
  for (let n = 2; names.has(tried); n++) tried = `${name} (${n})`;
  names.add(tried);
  return tried;
}
