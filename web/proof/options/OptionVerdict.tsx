import { VerdictMark } from '../../ui/VerdictMark.tsx';
import { t } from '../../words/t.ts';
import { verdictSentence } from '../../words/verdict-sentence.ts';
import text from '../../ui/text.module.css';
import css from './OptionCard.module.css';
import { countFindings } from '../state/gather-findings.ts';
import type { PlannedDesign } from '../state/planned-design.ts';

/** Whether all plates of an option hold together. */
export function OptionVerdict({ planned }: { readonly planned: PlannedDesign }) {
  if (planned.state === 'working') return <p className={text.soft}>{t('verdict.working')}</p>;
  if (planned.state === 'failed') return <p className={text.bad}>{t(planned.problem)}</p>;
  const { verdict, stops, looks } = countFindings(planned.plates.map(({ plate }) => plate));
  return (
    <p className={css.verdict}>
      <VerdictMark verdict={verdict} size={18} silent />
      <span>{verdictSentence(verdict, stops, looks)}</span>
    </p>
  );
}
