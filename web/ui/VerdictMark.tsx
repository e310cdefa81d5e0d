import { CircleAlert, CircleCheck, OctagonX } from 'lucide-react';
import type { Verdict } from '../../geometry/findings.ts';
import { t } from '../words/t.ts';
import css from './VerdictMark.module.css';

const SIGNS = { ready: CircleCheck, look: CircleAlert, stop: OctagonX };

interface VerdictMarkProps {
  readonly verdict: Verdict;
  readonly size?: number;
  /** Leave out the words for screen readers: they stand beside it. */
  readonly silent?: boolean;
}

/** A verdict as a sign of its own shape, so that it never hangs on colour alone. */
export function VerdictMark({ verdict, size = 18, silent = false }: VerdictMarkProps) {
  const Sign = SIGNS[verdict];
  return (
    <span className={css[verdict]}>
      <Sign size={size} aria-hidden />
      {!silent && <span className="sr-only">{t(`page.plates.marks.${verdict}`)}</span>}
    </span>
  );
}
