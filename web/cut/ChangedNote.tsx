import { refusalWords } from '../words/say/finding-words.ts';
import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import css from './ChangedNote.module.css';
import { useCut, useCutParts } from './state/cut-context.ts';

/** The plan was made for designs that were changed since: loudly, with the way out. */
export function ChangedNote() {
  const { work } = useCutParts();
  const changed = useCut((s) => s.changed);
  if (changed.length === 0) return null;
  const sentences = [...new Set(changed.map(refusalWords))];
  return (
    <div role="alert" className={css.note}>
      <div>
        <strong>{t('cut.changed.title')}</strong>
        <ul>
          {sentences.slice(0, 4).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </div>
      <Button kind="next" onClick={() => void work.planAgain()}>
        {t('cut.changed.again')}
      </Button>
    </div>
  );
}
