import { BadgeCheck, ChevronDown, ChevronUp, FileWarning } from 'lucide-react';
import { useMemo, useState } from 'react';
import { whyNoRevision } from '../../geometry/approval/revisions.ts';
import { isAllApproved, orderWords, standingOf, type Standing } from '../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { showFingerprint } from '../../geometry/design/show-fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { visible } from '../../geometry/design/visible.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import { bringBack, bringOrderBack } from '../state/actions/agreed/agree.ts';
import { Button } from '../ui/Button.tsx';
import { Differences } from '../ui/Differences.tsx';
import { refusalWords, wordingText } from '../words/say/finding-words.ts';
import { momentDay } from '../words/say/moment-words.ts';
import { t } from '../words/t.ts';
import css from './ApprovalNote.module.css';
import { useAct, usePage, useUi } from './page-context.ts';

interface ApprovalNoteProps {
  readonly design: Design;
  /** It is the open design, where what was approved can be brought back. */
  readonly open?: boolean;
  /** Said where several designs stand side by side. */
  readonly title?: string;
}

/** A quiet seal while the design is what was approved; once it is not, that at once, what changed, and the way back. */
export function ApprovalNote({ design, open, title }: ApprovalNoteProps) {
  const { book, ui } = usePage();
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const [listed, setListed] = useState(false);
  const fingerprint = useMemo(() => fingerprintOf(design, ownRules(design, book)), [design, book]);
  const standing = useMemo(() => standingOf(design, fingerprint), [design, fingerprint]);
  if (standing.kind === 'open') return null;
  const changed = standing.kind === 'changed';
  const unsure = !isAllApproved(standing);
  const order = orderWords(standing.order);
  const orderChanged = standing.kind === 'approved' && standing.order.kind === 'changed';
  const was = changed ? standing.was : undefined;
  const told = order.loud || standing.order.kind === 'unbound' ? `. ${wordingText(order.words, unit)}.` : '';
  const sentence = `${approvalWords(standing)}${told}`;

  function back(): void {
    const { letter } = standing as { readonly letter?: string };
    const refused = whyNoRevision(design);
    if (letter === undefined || refused !== undefined) {
      ui.getState().set({ notice: refused && refusalWords(refused) });
      return;
    }
    const keeping = { at: new Date().toISOString(), why: t('approved.beforeBack'), fingerprint };
    // the design may have become another one since this was drawn
    act((now) => (now === design ? bringBack(now, letter, keeping) : { design: now, undo: 'step' }));
    ui.getState().set({ notice: t('approved.broughtBack') });
  }

  return (
    <section className={css.note} data-changed={unsure || undefined} aria-label={t('approved.label')}>
      <div className={css.line}>
        {unsure ? <FileWarning size={20} aria-hidden /> : <BadgeCheck size={20} aria-hidden />}
        <p role="status" className={css.sentence} data-testid="approval">
          {title === undefined ? sentence : t('approved.ofTitle', { title: visible(title), sentence })}
        </p>
        {was !== undefined && (
          <>
            <button type="button" className={css.toggle} aria-expanded={listed} onClick={() => setListed(!listed)}>
              {t('approved.what')}
              {listed ? <ChevronDown size={18} aria-hidden /> : <ChevronUp size={18} aria-hidden />}
            </button>
            {open && (
              <Button kind="plain" onClick={back}>
                {t('approved.back')}
              </Button>
            )}
          </>
        )}
        {open && orderChanged && (
          <Button
            kind="plain"
            onClick={() => {
              act((now) => (now === design ? bringOrderBack(now) : { design: now, undo: 'step' }));
              ui.getState().set({ notice: t('approved.orderBroughtBack') });
            }}
          >
            {t('approved.orderBack')}
          </Button>
        )}
      </div>
      {changed && was === undefined && <p className={css.lost}>{t('approved.lost')}</p>}
      {listed && was !== undefined && (
        <div className={css.list}>
          <Differences
            before={was}
            after={design}
            unit={unit}
            book={book}
            prints={{ before: standing.approval.fingerprint, after: fingerprint }}
          />
        </div>
      )}
    </section>
  );
}

/** Who approved it, when, and which revision that was. */
function approvalWords(standing: Exclude<Standing, { readonly kind: 'open' }>): string {
  const { kind, letter, approval } = standing;
  const who = visible(approval.name.trim()) || t('approved.somebody');
  const when = approval.at.trim() === '' ? t('approved.undated') : momentDay(approval.at);
  const values = { who, when, letter: letter ?? '' };
  if (kind === 'approved') return t(letter === undefined ? 'approved.sealBare' : 'approved.seal', values);
  if (kind === 'short') return t('approved.short', { ...values, approved: showFingerprint(approval.fingerprint) });
  return t(letter === undefined ? 'approved.changedBare' : 'approved.changed', values);
}
