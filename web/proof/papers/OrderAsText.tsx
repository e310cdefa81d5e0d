import { Copy, Mail } from 'lucide-react';
import { useState } from 'react';
import type { Quote } from '../../../geometry/shop/quote.ts';
import { useDesign, usePage, useUi } from '../../page/page-context.ts';
import { copyText } from '../../handover/link/hand-on.ts';
import { orderLetter } from '../../handover/order/order-letter.ts';
import { Button } from '../../ui/Button.tsx';
import { Fold } from '../../ui/Fold.tsx';
import { moneyWords } from '../../words/say/money-words.ts';
import { t } from '../../words/t.ts';
import { mailTo } from '../../handover/link/mail-to.ts';
import layout from '../../ui/layout.module.css';
import text from '../../ui/text.module.css';
import css from './PapersPart.module.css';
import { usePlanned } from '../state/use-designs.ts';

/** The order as it is written in a mail: to read, to copy, to send. */
export function OrderAsText({ quote }: { readonly quote: Quote | undefined }) {
  const design = useDesign();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const planned = usePlanned(design);
  const [status, setStatus] = useState('');
  if (planned.state !== 'ready') return <p>{t('proof.working')}</p>;
  const price = quote && moneyWords(quote.totalMinor, quote.currency);
  const plates = planned.plates.map(({ plate }) => plate);
  const { subject, body } = orderLetter({ design, plates, book, unit, price });

  async function copy(): Promise<void> {
    setStatus((await copyText(body)) ? t('proof.papers.textCopied') : t('link.notCopied'));
  }

  function mail(): void {
    const href = mailTo({ subject, body });
    if (href === undefined) setStatus(t('proof.send.tooLongForMail'));
    else location.assign(href);
  }

  return (
    <>
      <div className={layout.buttons}>
        <Button kind="plain" onClick={() => void copy()}>
          <Copy size={16} aria-hidden /> {t('proof.papers.copyText')}
        </Button>
        <Button kind="plain" onClick={mail}>
          <Mail size={16} aria-hidden /> {t('proof.send.mail')}
        </Button>
      </div>
      <p role="status" className={`${text.soft} ${text.status}`}>
        {status}
      </p>
      <Fold title={t('proof.papers.text')}>
        <p className={css.text}>{body}</p>
      </Fold>
    </>
  );
}
