import { useMemo } from 'react';
import { faceEntry } from '../../fonts/catalogue.ts';
import { differencesOf } from '../../geometry/approval/differences.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { usePage, useUi } from '../app/page-context.ts';
import { findingWords } from '../ui/finding-words.ts';
import { t } from '../words/t.ts';
import css from './Differences.module.css';
import { DifferencePicture } from './DifferencePicture.tsx';

interface DifferencesProps {
  readonly before: Design;
  readonly after: Design;
  /** What the two are called in the legend. */
  readonly titles: { readonly before: string; readonly after: string };
  /** Whole fingerprints, where they are known: the shop's rules may be all that is different. */
  readonly prints?: { readonly before: string; readonly after: string };
}

/** What is different, in sentences and as a picture. */
export function Differences({ before, after, titles, prints }: DifferencesProps) {
  const { before: was, after: is } = prints ?? {};
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const naming = useMemo(
    () => ({ book, faceName, ...(was && is && { fingerprints: { before: was, after: is } }) }),
    [book, was, is],
  );
  const sentences = useMemo(() => differencesOf(before, after, naming), [before, after, naming]);
  return (
    <div className={css.differences}>
      <div className={css.said}>
        {sentences.length === 0 ? (
          <p>{t('proof.compare.nothing')}</p>
        ) : (
          <ul className={css.list} aria-label={t('proof.compare.list')}>
            {sentences.map((difference, i) => (
              <li key={i}>{findingWords(difference, unit)}</li>
            ))}
          </ul>
        )}
      </div>
      <DifferencePicture before={before} after={after} titles={titles} />
    </div>
  );
}

function faceName(id: string): string | undefined {
  return faceEntry(id)?.name;
}
