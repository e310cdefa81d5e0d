import type { BeginningId } from '../../state/beginning-ids.ts';
import css from './Beginnings.module.css';

/** What is cut from each, as path data in a box from -200 to 200: made at the build (web/serve/demo-pictures.ts). */
const PICTURES = import.meta.glob<string>('../../demo/*.json', { query: '?picture', import: 'default', eager: true });

/** A plate in its chime, small. */
export function BeginningPicture({ of }: { readonly of: BeginningId }) {
  return (
    <span className={css.chime}>
      <svg viewBox="-200 -200 400 400" className={css.plate} aria-hidden focusable="false">
        <circle r="200" className={css.metal} />
        <path d={PICTURES[`../../demo/${of}.json`]} fillRule="evenodd" className={css.cut} />
      </svg>
    </span>
  );
}
