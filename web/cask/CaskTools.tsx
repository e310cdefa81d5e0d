import { useStore } from 'zustand';
import { t } from '../words/t.ts';
import css from './CaskView.module.css';
import { looks, PAINTS } from './looks-store.ts';
import { VIEW_NAMES, type ViewName } from './set-views.ts';

interface CaskToolsProps {
  readonly view: ViewName;
  readonly onView: (name: ViewName) => void;
  /** There is more than one plate to show. */
  readonly several: boolean;
  readonly painted: boolean;
  readonly onSave: () => void;
}

/** Set views, paints, and the picture to take away. */
export function CaskTools({ view, onView, several, painted, onSave }: CaskToolsProps) {
  const { paint, together } = useStore(looks);
  const own = !PAINTS.some((p) => p === paint);
  return (
    <div className={css.tools}>
      <div className={css.views} role="group" aria-label={t('cask.views.legend')}>
        {VIEW_NAMES.map((name) => (
          <button key={name} type="button" data-last={name === view || undefined} onClick={() => onView(name)}>
            {t(`cask.views.${name}`)}
          </button>
        ))}
      </div>
      <div className={css.right}>
        {several && (
          <button
            type="button"
            className={css.tool}
            aria-pressed={together}
            onClick={() => looks.setState({ together: !together })}
          >
            {t('cask.together')}
          </button>
        )}
        <button type="button" className={css.tool} onClick={onSave}>
          {t('cask.save')}
        </button>
      </div>
      {painted && (
        <div className={css.paints} role="group" aria-label={t('cask.paint.legend')}>
          {PAINTS.map((colour, i) => (
            <button
              key={colour}
              type="button"
              className={css.paint}
              style={{ background: colour }}
              aria-label={t(PAINT_WORDS[i] ?? 'cask.paint.own')}
              title={t(PAINT_WORDS[i] ?? 'cask.paint.own')}
              aria-pressed={paint === colour}
              onClick={() => looks.setState({ paint: colour })}
            />
          ))}
          <label className={css.own} data-chosen={own || undefined} title={t('cask.paint.own')}>
            <input
              type="color"
              aria-label={t('cask.paint.own')}
              value={paint}
              onChange={(event) => looks.setState({ paint: event.target.value })}
            />
          </label>
        </div>
      )}
    </div>
  );
}

const PAINT_WORDS = [
  'cask.paint.black',
  'cask.paint.lime',
  'cask.paint.oxide',
  'cask.paint.blue',
  'cask.paint.green',
] as const;
