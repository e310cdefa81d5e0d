import type { Verdict } from '../../geometry/findings.ts';
import { t } from './t.ts';

/** What a plate's checks come to, in one sentence. */
export function verdictSentence(verdict: Verdict, stops: number, looks: number): string {
  if (verdict === 'ready') return t('verdict.ready');
  return verdict === 'look' ? t('verdict.look', { count: looks }) : t('verdict.stop', { count: stops });
}
