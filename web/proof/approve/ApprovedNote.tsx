import { showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { CircleCheck, Undo2 } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { orderWords, type Standing } from '../../../geometry/approval/standing.ts';
import { withdrawApproval } from '../../state/actions/agreed/agree.ts';
import { useAct, useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { t } from '../../words/t.ts';
import layout from '../../ui/layout.module.css';
import text from '../../ui/text.module.css';
import css from './ApprovedNote.module.css';
import { wordingText } from '../../words/say/finding-words.ts';
import { momentWords } from '../../words/say/moment-words.ts';
import { SendLink } from '../papers/SendLink.tsx';

interface ApprovedNoteProps {
  readonly standing: Extract<Standing, { kind: 'approved' }>;
}

/** Who approved it, when, and how many for how much; and the way back to the shop. */
export function ApprovedNote({ standing }: ApprovedNoteProps) {
  const { approval, letter, order } = standing;
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const note = useRef<HTMLDivElement>(null);
  const { name, at, how, fingerprint } = approval;
  // whoever has just approved is told so, and finds what to do next
  useEffect(() => {
    const age = Date.now() - Date.parse(at);
    if (age >= 0 && age < JUST_NOW_MS) note.current?.focus();
  }, [at]);
  return (
    <div ref={note} className={css.note} role="group" aria-label={t('proof.approved.title')} tabIndex={-1}>
      <p className={css.who}>
        <CircleCheck size={22} aria-hidden />
        <span>
          <strong>{t('proof.approved.by', { name })}</strong>
          <span className={text.soft}>
            {t(`proof.approved.how.${how}`, { at: momentWords(at) })}{' '}
            {letter === undefined
              ? t('proof.approved.print', { fingerprint: showFingerprint(fingerprint) })
              : t('proof.approved.printAs', { letter, fingerprint: showFingerprint(fingerprint) })}
          </span>
          <span className={text.soft}>{wordingText(orderWords(order).words, unit)}.</span>
        </span>
      </p>
      <div className={layout.stack}>
        <p>{t('proof.send.backHint')}</p>
        <SendLink to="shop" />
      </div>
      <Button kind="quiet" className={css.withdraw} onClick={() => act(withdrawApproval)}>
        <Undo2 size={16} aria-hidden /> {t('proof.approved.withdraw')}
      </Button>
    </div>
  );
}

const JUST_NOW_MS = 3000;
