import { visible } from '../../geometry/design/visible.ts';
import { CircleCheck, CircleDashed, OctagonAlert } from 'lucide-react';
import type { Standing } from '../../geometry/approval/standing.ts';
import { t } from '../words/t.ts';
import { momentWords } from '../words/say/moment-words.ts';
import css from './StandingLine.module.css';

const SIGNS = { open: CircleDashed, approved: CircleCheck, short: OctagonAlert, changed: OctagonAlert };

/** Whether what is cut is what was approved: always in sight, as a sign of its own shape and in words. */
export function StandingLine({ standing }: { readonly standing: Standing }) {
  const Sign = SIGNS[standing.kind];
  return (
    <p role="status" className={css.line} data-kind={standing.kind} data-testid="standing">
      <Sign size={18} aria-hidden />
      <span>
        {standing.kind === 'open'
          ? t('proof.standing.open')
          : t(`proof.standing.${standing.kind}`, {
              name: visible(standing.approval.name),
              at: momentWords(standing.approval.at),
            })}
      </span>
    </p>
  );
}
