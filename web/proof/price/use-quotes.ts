import { useMemo } from 'react';
import type { OptionDesign } from '../../../geometry/approval/options.ts';
import type { Quote } from '../../../geometry/shop/quote.ts';
import { usePage } from '../../page/page-context.ts';
import { plannedOf } from '../state/planned-design.ts';
import { useProof } from '../state/proof-context.ts';
import { quoteFor } from '../../handover/price/quote-for.ts';

/** The prices of all options that are planned, by the id of the option; those on request are absent. */
export function useQuotes(options: readonly OptionDesign[]): ReadonlyMap<string, Quote> {
  const { shop, book } = usePage();
  const planned = useProof((s) => s.planned);
  return useMemo(() => {
    const quotes = new Map<string, Quote>();
    for (const { id, design } of options) {
      const made = plannedOf(design, planned);
      const quote = shop && made.state === 'ready' ? quoteFor(shop, book, design, made.plates) : undefined;
      if (quote && 'lines' in quote) quotes.set(id, quote);
    }
    return quotes;
  }, [shop, book, options, planned]);
}
