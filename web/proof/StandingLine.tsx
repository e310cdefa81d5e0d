import { visible } from '../../geometry/design/visible.ts';
import { CircleCheck, CircleDashed, OctagonAlert } from 'lucide-react';
import { orderWords, type Standing } from '../../geometry/approval/standing.ts';
import { wordingText } from '../words/say/finding-words.ts';
import { t } from '../words/t.ts';
import { useUi } from '../page/page-context.ts';
import { momentWords } from '../words/say/moment-words.ts';
import css from './StandingLine.module.css';

const SIGNS = { open: CircleDashed, approved: CircleCheck, short: OctagonAlert, changed: OctagonAlert };

/** Whether what is cut is what was approved: always in sight, as a sign of its own shape and in words. */
export function StandingLine({ standing }: { readonly standing: Standing }) {
  const unit = useUi((s) => s.unit);
  const order = standing.kind === 'open' ? undefined : orderWords(standing.order);
  const kind = standing.kind === 'approved' && order?.loud ? 'changed' : standing.kind;
  const Sign = SIGNS[kind];
  return (
    <p role="status" className={css.line} data-kind={kind} data-testid="standing">
      <Sign size={18} aria-hidden />
      <span>
        {standing.kind === 'open'
          ? t('proof.standing.open')
          : t(`proof.standing.${standing.kind}`, {
              name: visible(standing.approval.name),
              at: momentWords(standing.approval.at),
            })}
        {order && `. ${wordingText(order.words, unit)}.`}
      </span>
    </p>
  );
}
