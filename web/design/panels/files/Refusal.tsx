import type { Finding } from '../../../../geometry/findings.ts';
import type { PlateResult } from '../../../../geometry/plate/plate.ts';
import { applyMend } from '../../../state/actions/apply-mend.ts';
import { useAct, useUi } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { VerdictMark } from '../../../ui/VerdictMark.tsx';
import { findingWords, mendWords } from '../../../words/say/finding-words.ts';
import { t } from '../../../words/t.ts';
import css from './Refusal.module.css';

/** More than a person mends in one go; the rest is under the plate. */
const MOST_SHOWN = 5;

/** Why there is no cut file yet, and how to mend it. */
export function Refusal({ plates }: { readonly plates: readonly PlateResult[] }) {
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const reasons = reasonsOf(plates);
  const more = reasons.length - MOST_SHOWN;
  return (
    <div className={css.refusal} role="alert">
      <p className={css.title}>
        <VerdictMark verdict="stop" silent /> {t('take.refused')}
      </p>
      <ul className={css.list}>
        {reasons.slice(0, MOST_SHOWN).map(({ finding, names }) => {
          const { mend } = finding;
          return (
            <li key={finding.sentence}>
              <span className={css.plate}>{names.join(', ')}</span>
              <p>{findingWords(finding, unit)}</p>
              {mend !== undefined && (
                <Button kind="plain" onClick={() => act((d) => applyMend(d, mend.change))}>
                  {mendWords(mend, unit)}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
      {more > 0 && <p>{t('take.refusedMore', { count: more })}</p>}
      <p className={css.hint}>{t('take.refusedHint')}</p>
    </div>
  );
}

interface Reason {
  readonly finding: Finding;
  readonly names: readonly string[];
}

/** What stops the cut, each sentence once, with the plates it is true of. */
function reasonsOf(plates: readonly PlateResult[]): Reason[] {
  const reasons = new Map<string, Reason>();
  for (const { name, findings } of plates) {
    for (const finding of findings) {
      if (finding.severity !== 'stop') continue;
      const known = reasons.get(finding.sentence);
      const names = known?.names ?? [];
      reasons.set(finding.sentence, {
        finding: known?.finding ?? finding,
        names: names.includes(name) ? names : [...names, name],
      });
    }
  }
  return [...reasons.values()];
}
