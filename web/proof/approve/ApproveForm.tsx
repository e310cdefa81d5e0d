import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { useId, useState } from 'react';
import { whyNoApproval } from '../../../geometry/approval/approve.ts';
import { offerNow } from '../../../geometry/approval/standing.ts';
import { offerOf, pricesMark } from '../../../geometry/approval/offer.ts';
import type { Offer } from '../../../geometry/design/schema.ts';
import { quoteFor } from '../../handover/price/quote-for.ts';
import { approve } from '../../state/actions/agreed/agree.ts';
import { useAct, useDesign, usePage } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { Check } from '../../ui/Check.tsx';
import { Field } from '../../ui/fields/Field.tsx';
import fieldCss from '../../ui/fields/Field.module.css';
import { momentDay } from '../../words/say/moment-words.ts';
import { refusalWords } from '../../words/say/finding-words.ts';
import { Fold } from '../../ui/Fold.tsx';
import { TextField } from '../../ui/fields/TextField.tsx';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './ApproveForm.module.css';
import { countFindings } from '../state/gather-findings.ts';
import { dayNow, momentNow } from '../state/now.ts';
import type { PlannedDesign } from '../state/planned-design.ts';

type PlannedPlates = Extract<PlannedDesign, { state: 'ready' }>['plates'];

interface ApproveFormProps {
  readonly planned: PlannedDesign;
  readonly fingerprint: string;
}

/** Name and a tick that all was read: by the customer here, or by the shop for what was signed on paper. */
export function ApproveForm({ planned, fingerprint }: ApproveFormProps) {
  const design = useDesign();
  const { shop, book } = usePage();
  const act = useAct();
  const titleId = useId();
  const [name, setName] = useState('');
  const [read, setRead] = useState(false);
  const [missing, setMissing] = useState(false);
  if (planned.state !== 'ready') return null;
  const offer = offerSeen(planned.plates);
  const plates = planned.plates.map(({ plate }) => plate);
  if (countFindings(plates).verdict === 'stop') {
    return (
      <section className={css.form} aria-labelledby={titleId}>
        <h3 id={titleId}>{t('proof.approve.cannot')}</h3>
        <p>{t('proof.approve.cannotHint')}</p>
      </section>
    );
  }
  const refused = whyNoApproval(design, { name: name.trim() || '-', fingerprint });

  /** With the price that stands on the page: the shop's offer while it holds, else by the list of today. */
  function offerSeen(made: PlannedPlates): Offer {
    const own = offerNow(design, fingerprint);
    if (own) return own;
    const quote = shop && quoteFor(shop, book, design, made);
    const priced = quote && 'lines' in quote ? { quote, shopPrices: pricesMark(shop) } : {};
    return offerOf(design, { fingerprint, made: dayNow(), ...priced });
  }

  const lapsed = offer.validUntil !== undefined && offer.validUntil < dayNow() ? offer.validUntil : undefined;

  function give(): void {
    if (name.trim() === '' || !read) {
      setMissing(true);
      return;
    }
    act((d) => approve(d, { name, at: momentNow(), how: 'link', fingerprint, offer }));
  }

  return (
    <section className={css.form} aria-labelledby={titleId}>
      <h3 id={titleId}>{t('proof.approve.title')}</h3>
      <form
        className={css.fields}
        onSubmit={(e) => {
          e.preventDefault();
          give();
        }}
      >
        <TextField
          label={t('proof.approve.name')}
          value={name}
          maxLength={200}
          problem={missing && name.trim() === '' ? t('proof.approve.noName') : undefined}
          onChange={setName}
        />
        <div>
          <Check label={t('proof.approve.read')} checked={read} onChange={setRead} />
          {missing && !read && <p className={css.problem}>{t('proof.approve.notRead')}</p>}
        </div>
        <p className={text.note}>{t('proof.approve.means', { fingerprint: showFingerprint(fingerprint) })}</p>
        {lapsed !== undefined && <p className={css.problem}>{t('proof.offer.lapsed', { day: momentDay(lapsed) })}</p>}
        {refused && (
          <p role="alert" className={css.problem}>
            {refusalWords(refused)}
          </p>
        )}
        <p role="status" className="sr-only">
          {missing && (name.trim() === '' || !read) ? t('proof.approve.incomplete') : ''}
        </p>
        <Button kind="next" type="submit" disabled={refused !== undefined || lapsed !== undefined}>
          {t('proof.approve.button')}
        </Button>
      </form>
      <Fold title={t('proof.paper.title')}>
        <PaperFields fingerprint={fingerprint} offer={offer} />
      </Fold>
    </section>
  );
}

/** The shop types who signed the printed proof, and when. */
function PaperFields({ fingerprint, offer }: { readonly fingerprint: string; readonly offer: Offer }) {
  const act = useAct();
  const [name, setName] = useState('');
  const [day, setDay] = useState(dayNow);
  return (
    <div className={css.fields}>
      <p className={text.note}>{t('proof.paper.hint')}</p>
      <TextField label={t('proof.paper.name')} value={name} maxLength={200} onChange={setName} />
      <Field label={t('proof.paper.day')}>
        {({ id }) => (
          <input
            id={id}
            type="date"
            className={fieldCss.control}
            value={day}
            max={dayNow()}
            onChange={(e) => setDay(e.target.value)}
          />
        )}
      </Field>
      <Button
        kind="plain"
        disabled={name.trim() === '' || day === ''}
        onClick={() => act((d) => approve(d, { name, at: day, how: 'paper', fingerprint, offer }))}
      >
        {t('proof.paper.button')}
      </Button>
    </div>
  );
}
