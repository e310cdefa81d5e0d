import { useMemo } from 'react';
import { DIFFERENCE_GROUPS } from '../../geometry/approval/difference.ts';
import { differencesOf, type Naming } from '../../geometry/approval/differences.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Unit } from '../state/tastes.ts';
import { t } from '../words/t.ts';
import css from './Differences.module.css';
import { findingWords } from './finding-words.ts';

interface DifferencesProps {
  readonly before: Design;
  readonly after: Design;
  readonly unit: Unit;
  readonly naming: Naming;
}

/** What is cut otherwise in one design than in the other, in sentences, what belongs together under one heading. */
export function Differences({ before, after, unit, naming }: DifferencesProps) {
  // naming is made anew at every drawing and says the same
  // eslint-disable-next-line react-hooks/exhaustive-deps -- the two designs decide
  const found = useMemo(() => differencesOf(before, after, naming), [before, after]);
  return (
    <dl className={css.groups}>
      {DIFFERENCE_GROUPS.map((group) => {
        const own = found.filter((d) => d.group === group);
        if (own.length === 0) return null;
        return (
          <div key={group}>
            <dt>{t(`approved.groups.${group}`)}</dt>
            <dd>
              <ul>
                {own.map((d, i) => (
                  <li key={`${d.code} ${i}`}>{findingWords(d, unit)}</li>
                ))}
              </ul>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
