import { useState } from 'react';
import { useDesign } from '../../page/page-context.ts';
import { Dialog } from '../../ui/Dialog.tsx';
import { moneyWords } from '../../words/say/money-words.ts';
import { t } from '../../words/t.ts';
import { PriceLines } from './PriceLines.tsx';
import css from './PriceLine.module.css';
import { useQuote } from './use-quote.ts';

/** The price in one word, beside the verdict; it opens how it adds up. Nothing where there is none. */
export function PriceLine() {
  const { title } = useDesign();
  const { quoted } = useQuote();
  const [open, setOpen] = useState(false);
  if (quoted.state !== 'ready') return null;
  const { quote } = quoted;
  const price = moneyWords(quote.totalMinor, quote.currency);
  return (
    <>
      <button
        type="button"
        className={css.price}
        aria-haspopup="dialog"
        aria-label={`${price}. ${t('proof.price.linesOf', { name: title })}`}
        data-testid="price-line"
        onClick={() => setOpen(true)}
      >
        {price}
      </button>
      {open && (
        <Dialog title={t('proof.price.lines')} closeLabel={t('trouble.close')} onClose={() => setOpen(false)}>
          <PriceLines quote={quote} />
        </Dialog>
      )}
    </>
  );
}
