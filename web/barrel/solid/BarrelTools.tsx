import { useStore } from 'zustand';
import { t } from '../../words/t.ts';
import css from './BarrelView.module.css';
import { looks, PAINTS } from './looks-store.ts';
import { VIEW_NAMES, type ViewName } from './set-views.ts';

interface BarrelToolsProps {
  readonly view: ViewName;
  readonly onView: (name: ViewName) => void;
  /** There is more than one plate to show. */
  readonly several: boolean;
  readonly painted: boolean;
  readonly onSave: () => void;
}

/** Set views, paints, and the picture to take away. */
export function BarrelTools({ view, onView, several, painted, onSave }: BarrelToolsProps) {
  const { paint, together } = useStore(looks);
  const own = !PAINTS.some((p) => p === paint);
  return (
    <div className={css.tools} data-scrolls>
      <div className={css.views} role="group" aria-label={t('cask.views.legend')}>
        {VIEW_NAMES.map((name) => (
          <button
            key={name}
            type="button"
            title={t(`cask.views.${name}`)}
            data-last={name === view || undefined}
            onClick={() => onView(name)}
          >
            <ViewSign name={name} />
            <span>{t(`cask.views.${name}`)}</span>
          </button>
        ))}
      </div>
      <div className={css.right}>
        {several && (
          <button
            type="button"
            className={css.tool}
            title={t('cask.together')}
            aria-pressed={together}
            onClick={() => looks.setState({ together: !together })}
          >
            <Sign path="M1.5 9a5 5 0 1 0 10 0a5 5 0 1 0-10 0M12.6 11a2.6 2.6 0 1 0 3.9 0" />
            <span>{t('cask.together')}</span>
          </button>
        )}
        <button type="button" className={css.tool} title={t('cask.save')} onClick={onSave}>
          <Sign path="M9 2v9M5.5 7.5L9 11l3.5-3.5M2.5 13v2.5h13V13" />
          <span>{t('cask.save')}</span>
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

/** A barrel end from in front, aslant, from above, and near. */
const SIGNS: Record<ViewName, string> = {
  straight: 'M3 9a6 6 0 1 0 12 0a6 6 0 1 0-12 0M5.6 9a3.4 3.4 0 1 0 6.8 0a3.4 3.4 0 1 0-6.8 0',
  quarter: 'M2.5 9.5a3.4 5 0 1 0 6.8 0a3.4 5 0 1 0-6.8 0M6 4.5l6.5-1c2.6 2.8 2.6 6.6 0 9.5l-6 1.5',
  above: 'M4 13c3 2.4 7 2.4 10 0M4 13L4.6 4h8.8l.6 9M4 13c3-1.8 7-1.8 10 0',
  close: 'M3 7.5a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0M11 11l4.5 4.5M5.5 7.5h4M7.5 5.5v4',
};

function ViewSign({ name }: { readonly name: ViewName }) {
  return <Sign path={SIGNS[name]} />;
}

function Sign({ path }: { readonly path: string }) {
  return (
    <svg width="18" height="18" viewBox="0 0 18 18" fill="none" stroke="currentColor" strokeWidth="1.5" aria-hidden>
      <path d={path} />
    </svg>
  );
}
