import { type ReactNode, useMemo } from 'react';
import { faceEntry } from '../../fonts/catalogue.ts';
import { DIFFERENCE_GROUPS } from '../../geometry/approval/difference.ts';
import { differencesOf } from '../../geometry/approval/differences.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Unit } from '../words/preferences.ts';
import { t } from '../words/t.ts';
import css from './Differences.module.css';
import { findingWords } from '../words/say/finding-words.ts';

interface DifferencesProps {
  readonly before: Design;
  readonly after: Design;
  readonly unit: Unit;
  readonly book: StockBook;
  /** Whole fingerprints, where they are known: the shop's rules may be all that is different. */
  readonly prints?: { readonly before: string; readonly after: string };
  /** Said where nothing is cut otherwise. */
  readonly none?: ReactNode;
}

/** What is cut otherwise in one design than in the other, in sentences, what belongs together under one heading. */
export function Differences({ before, after, unit, book, prints, none }: DifferencesProps) {
  const { before: was, after: is } = prints ?? {};
  const found = useMemo(
    () =>
      differencesOf(before, after, {
        book,
        faceName: (id) => faceEntry(id)?.name,
        ...(was !== undefined && is !== undefined && { fingerprints: { before: was, after: is } }),
      }),
    [before, after, book, was, is],
  );
  if (found.length === 0) return none;
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
