import { useEffect, useMemo, useState } from 'react';
import { createCache } from '../../../geometry/cache.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Quote } from '../../../geometry/shop/quote.ts';
import type { ShopBook } from '../../../geometry/shop/shop-book.ts';
import { useDesign, usePage, usePlates } from '../../page/page-context.ts';
import type { Planned, PlannedPlate } from '../../worker/plate-api.ts';
import { plateKey } from './plate-key.ts';
import { quoteFor } from './quote-for.ts';

/** A design that changes is left alone until it has rested so long: planning a plate takes the worker's time. */
const REST_MS = 900;

/** Plates as they were planned; the price is asked for in more places than one. */
const planned = createCache<Promise<Planned>>(8);

export type Quoted =
  | { readonly state: 'working' }
  /** Something stops the cut, or nobody says what this costs. */
  | { readonly state: 'none' }
  | { readonly state: 'ready'; readonly quote: Quote };

/** The price of the design as it is, or of another, and the shop that asks it; planned once the page's plates are made. */
export function useQuote(other?: Design): { readonly quoted: Quoted; readonly shop: ShopBook | undefined } {
  const { client, book, wholeShop } = usePage();
  const now = useDesign();
  const design = other ?? now;
  const busy = usePlates((s) => s.busy);
  const stopped = usePlates((s) => design.plates.some(({ id }) => s.plates[id]?.verdict === 'stop'));
  const key = useMemo(() => {
    const { title, plates, offer, approval } = design;
    return JSON.stringify([plateKey(design, ''), title, plates, offer, approval]);
  }, [design]);
  const [shop, setShop] = useState<ShopBook>();
  const [known, setKnown] = useState<{ readonly key: string; readonly quoted: Quoted }>();

  useEffect(() => {
    if (busy) return;
    let gone = false;
    const find = async (): Promise<void> => {
      const { shop: whole } = await wholeShop();
      if (gone) return;
      setShop(whole);
      const quote = whole && !stopped ? await quoteOf(whole, design) : undefined;
      if (!gone) setKnown({ key, quoted: quote ? { state: 'ready', quote } : { state: 'none' } });
    };
    const quoteOf = async (from: ShopBook, of: Design): Promise<Quote | undefined> => {
      if (of.offer ?? of.approval) {
        const { agreedQuote } = await import('./agreed-quote.ts');
        const agreed = agreedQuote(of, book);
        if (agreed) return agreed;
      }
      const plates: PlannedPlate[] = [];
      for (const { id, name, quantity } of of.plates) {
        const plateIs = plateKey(of, id);
        const made = await planned.getOrMake(plateIs, () => client.plan(of, id));
        if ('problem' in made) planned.delete(plateIs);
        if (gone || 'problem' in made) return undefined;
        plates.push({ ...made, plate: { ...made.plate, name, quantity } });
      }
      const quote = quoteFor(from, book, of, plates);
      return 'lines' in quote ? quote : undefined;
    };
    const timer = setTimeout(() => void find(), REST_MS);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
    // the key says all of the design that a price hangs on
    // eslint-disable-next-line react-hooks/exhaustive-deps -- see above
  }, [key, busy, stopped, client, book, wholeShop]);

  return { quoted: known?.key === key ? known.quoted : { state: 'working' }, shop };
}
