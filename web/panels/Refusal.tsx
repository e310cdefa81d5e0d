import type { PlateResult } from '../../geometry/plate.ts';
import { applyMend } from '../actions/apply-mend.ts';
import { useAct } from '../app/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { VerdictMark } from '../ui/VerdictMark.tsx';
import { words } from '../words/en.ts';
import css from './Refusal.module.css';

/** Why there is no cut file yet, and how to mend it. */
export function Refusal({ plates }: { readonly plates: readonly PlateResult[] }) {
  const act = useAct();
  return (
    <div className={css.refusal} role="alert">
      <p className={css.title}>
        <VerdictMark verdict="stop" silent /> {words.take.refused}
      </p>
      {plates.map((plate) => (
        <div key={plate.plateId}>
          <p className={css.plate}>{plate.name}</p>
          <ul className={css.list}>
            {plate.findings
              .filter((f) => f.severity === 'stop')
              .map((finding, i) => {
                const { mend } = finding;
                return (
                  <li key={`${finding.code}-${i}`}>
                    {finding.sentence}{' '}
                    {mend !== undefined && (
                      <Button kind="quiet" onClick={() => act((d) => applyMend(d, mend.change))}>
                        {mend.label}
                      </Button>
                    )}
                  </li>
                );
              })}
          </ul>
        </div>
      ))}
      <p className={css.hint}>{words.take.refusedHint}</p>
    </div>
  );
}
