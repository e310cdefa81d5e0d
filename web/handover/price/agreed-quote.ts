import { quoteOfOffer } from '../../../geometry/approval/offer.ts';
import { offerNow } from '../../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Quote } from '../../../geometry/shop/quote.ts';
import { ownRules } from '../../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../../geometry/stock/stock-book.ts';

/** The price that was offered or approved for the design as it is, whatever the list says today. */
export function agreedQuote(design: Design, book: StockBook): Quote | undefined {
  const offer = offerNow(design, fingerprintOf(design, ownRules(design, book)));
  return offer && quoteOfOffer(offer);
}
