import type { Design } from '../../../geometry/design/schema.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { Differences } from '../../ui/Differences.tsx';
import { t } from '../../words/t.ts';
import css from './ComparedDesigns.module.css';
import { DifferencePicture } from './DifferencePicture.tsx';

interface ComparedDesignsProps {
  readonly before: Design;
  readonly after: Design;
  /** What the two are called in the legend. */
  readonly titles: { readonly before: string; readonly after: string };
  /** Whole fingerprints, where they are known. */
  readonly prints?: { readonly before: string; readonly after: string };
}

/** What is different, in sentences and as a picture. */
export function ComparedDesigns({ before, after, titles, prints }: ComparedDesignsProps) {
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  return (
    <div className={css.compared}>
      <div className={css.said}>
        <Differences
          before={before}
          after={after}
          unit={unit}
          book={book}
          {...(prints && { prints })}
          none={<p>{t('proof.compare.nothing')}</p>}
        />
      </div>
      <DifferencePicture before={before} after={after} titles={titles} />
    </div>
  );
}
