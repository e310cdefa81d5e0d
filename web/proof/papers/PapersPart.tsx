import { FileArchive, FileText, Share2 } from 'lucide-react';
import { useState, type ReactNode } from 'react';
import type { PaperName } from '../../../geometry/files/paper/page-size.ts';
import { saveFile } from '../../page/save-file.ts';
import { shareFile } from '../../page/share-file.ts';
import { useDesign, usePage, useUi } from '../../page/page-context.ts';
import { useFilesHeld } from '../../page/use-files-held.ts';
import { Button } from '../../ui/Button.tsx';
import { Check } from '../../ui/Check.tsx';
import { Choice } from '../../ui/fields/Choice.tsx';
import { t } from '../../words/t.ts';
import { orderLetter } from '../../handover/order/order-letter.ts';
import { moneyWords } from '../../words/say/money-words.ts';
import type { MadeFile, ProofWish } from '../../worker/plate-api.ts';
import { agreedQuote } from '../../handover/price/agreed-quote.ts';
import { OfferPart } from './OfferPart.tsx';
import { OrderAsText } from './OrderAsText.tsx';
import layout from '../../ui/layout.module.css';
import text from '../../ui/text.module.css';
import css from './PapersPart.module.css';
import { SendLink } from './SendLink.tsx';
import { plannedOf } from '../state/planned-design.ts';
import { useProof } from '../state/proof-context.ts';
import { useOptions, usePlanned, usePlanning } from '../state/use-designs.ts';
import { useQuotes } from '../price/use-quotes.ts';
import { useTaking } from './use-taking.ts';

/** All that goes out of the page: the proof, the spec sheet, the order, the link. */
export function PapersPart() {
  const design = useDesign();
  const { shop, book } = usePage();
  const language = useUi((s) => s.language);
  const unit = useUi((s) => s.unit);
  const plannedBase = usePlanned(design);
  const options = useOptions();
  usePlanning(options.map((o) => o.design));
  const quotes = useQuotes(options);
  // a proof without the price would say that it is on request
  const waits = useProof(
    ({ planned }) =>
      shop?.prices !== undefined && options.some((o) => plannedOf(o.design, planned).state === 'working'),
  );
  const [tiles, setTiles] = useState(false);
  const [page, setPage] = useState<PaperName>(shop?.pageSize ?? (usesLetter() ? 'letter' : 'a4'));
  const held = useFilesHeld();
  const { taking, make } = useTaking(design);
  const manner = { page, language };
  const [base, ...others] = options;
  const today = base && quotes.get(base.id);
  const quote = agreedQuote(design, book) ?? today;
  const wish: ProofWish = {
    ...manner,
    tiles,
    ...(shop && { shop }),
    ...(quote && { quote }),
    options: others.map(({ id, name, design: other }) => {
      const asked = quotes.get(id);
      return { name: name || t('proof.options.unnamed'), design: other, ...(asked && { quote: asked }) };
    }),
  };

  async function takeProof(): Promise<void> {
    const [file] = await make([{ kind: 'proof', wish }], t('proof.papers.proof'));
    if (file) saveFile(file);
  }

  async function takeSheet(): Promise<void> {
    const [file] = await make([{ kind: 'spec-sheet', manner }], t('proof.papers.sheet'));
    if (file) saveFile(file);
  }

  /** The order as it is read, with the price that counts. */
  function orderTextFile(): MadeFile | undefined {
    if (plannedBase.state !== 'ready') return undefined;
    const price = quote && moneyWords(quote.totalMinor, quote.currency);
    const { body } = orderLetter({ design, plates: plannedBase.plates.map(({ plate }) => plate), book, unit, price });
    return { name: 'order.txt', type: 'text/plain', bytes: new TextEncoder().encode(body) };
  }

  /** The order carries the papers just as they would be taken alone. */
  async function takeOrder(share: boolean): Promise<void> {
    const what = t('proof.papers.order');
    const papers = await make(
      [
        { kind: 'proof', wish },
        { kind: 'spec-sheet', manner },
      ],
      what,
    );
    const [proof, sheet] = papers;
    if (!proof || !sheet) return;
    const letter = orderTextFile();
    const [file] = await make(
      [
        {
          kind: 'order',
          papers: [
            { role: 'proof', file: proof },
            { role: 'spec-sheet', file: sheet },
            ...(letter ? [{ role: 'other' as const, file: letter }] : []),
          ],
        },
      ],
      what,
    );
    if (!file) return;
    if (share && (await shareFile(file, design.title, '')) !== 'no') return;
    saveFile(file);
  }

  const canShare = typeof (navigator as Partial<Navigator>).canShare === 'function';
  return (
    <section className={css.part} aria-labelledby="proof-papers">
      <h2 id="proof-papers" className={text.title}>
        {t('proof.papers.title')}
      </h2>
      <Choice<PaperName>
        legend={t('proof.papers.size')}
        showLegend
        value={page}
        options={(['a4', 'letter'] as const).map((value) => ({ value, label: t(`proof.papers.sizes.${value}`) }))}
        onChange={setPage}
      />
      <p role="status" className={`${taking.bad ? text.bad : text.soft} ${text.status}`}>
        {waits && !taking.making ? t('proof.price.working') : taking.sentence}
      </p>
      {held && <p className={text.bad}>{t('trouble.numbers.held')}</p>}
      {taking.progress && (
        <progress
          className={css.progress}
          aria-label={taking.sentence}
          max={taking.progress.of}
          value={taking.progress.done}
        />
      )}
      <ul className={css.papers}>
        {(shop ?? design.offer) && (
          <Paper title={t('proof.offer.title')} hint={t('proof.offer.hint')}>
            <OfferPart today={today} waits={waits} />
          </Paper>
        )}
        <Paper title={t('proof.papers.proof')} hint={t('proof.papers.proofHint')}>
          <Check label={t('proof.papers.tiles')} checked={tiles} onChange={setTiles} />
          <div className={layout.buttons}>
            <Button
              kind="next"
              disabled={taking.making || waits || held}
              aria-label={`${t('proof.papers.take')}: ${t('proof.papers.proof')}`}
              onClick={() => void takeProof()}
            >
              <FileText size={16} aria-hidden /> {t('proof.papers.take')}
            </Button>
          </div>
        </Paper>
        <Paper title={t('proof.papers.sheet')} hint={t('proof.papers.sheetHint')}>
          <div className={layout.buttons}>
            <Button
              kind="plain"
              disabled={taking.making || held}
              aria-label={`${t('proof.papers.take')}: ${t('proof.papers.sheet')}`}
              onClick={() => void takeSheet()}
            >
              <FileText size={16} aria-hidden /> {t('proof.papers.take')}
            </Button>
          </div>
        </Paper>
        <Paper title={t('proof.papers.order')} hint={t('proof.papers.orderHint')}>
          <div className={layout.buttons}>
            <Button
              kind="plain"
              disabled={taking.making || waits || held}
              aria-label={`${t('proof.papers.take')}: ${t('proof.papers.order')}`}
              onClick={() => void takeOrder(false)}
            >
              <FileArchive size={16} aria-hidden /> {t('proof.papers.take')}
            </Button>
            {canShare && (
              <Button kind="plain" disabled={taking.making || waits || held} onClick={() => void takeOrder(true)}>
                <Share2 size={16} aria-hidden /> {t('proof.papers.share')}
              </Button>
            )}
          </div>
        </Paper>
        <Paper title={t('proof.papers.text')} hint={t('proof.papers.textHint')}>
          <OrderAsText quote={quote} />
        </Paper>
        <Paper title={t('proof.send.title')} hint={t('proof.send.hint')}>
          <SendLink to="customer" />
        </Paper>
      </ul>
    </section>
  );
}

interface PaperProps {
  readonly title: string;
  readonly hint: string;
  readonly children: ReactNode;
}

function Paper({ title, hint, children }: PaperProps) {
  return (
    <li>
      <div>
        <h3>{title}</h3>
        <p>{hint}</p>
      </div>
      <div className={css.does}>{children}</div>
    </li>
  );
}

/** Where paper is measured in inches (Unicode CLDR, paperSize US-Letter: the regions a browser is likely to say). */
function usesLetter(): boolean {
  return /-(US|CA|MX|PH|CL|CO|VE)$/i.test(navigator.language);
}
