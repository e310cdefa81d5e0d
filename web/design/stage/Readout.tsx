import { useStore } from 'zustand';
import { clockAngleDeg } from '../../../geometry/measure/clock.ts';
import { formatLength } from '../../words/say/format-number.ts';
import type { DragStore } from './carry/drag-store.ts';
import type { Units } from './canvas/ruler.ts';
import styles from './stage.module.css';

/** How far from the centre the pointer is, and on which angle of the clock; for the eye only. */
export function Readout(props: {
  readonly store: DragStore;
  readonly radiusMm: number;
  readonly units: Units;
  readonly unitWord: string;
}) {
  const { store, radiusMm, units, unitWord } = props;
  const at = useStore(store, (s) => s.pointer);
  if (!at || Math.hypot(at.x, at.y) > radiusMm * 1.2) return null;
  const away = formatLength(Math.hypot(at.x, at.y), units, units === 'mm' ? 0 : 2);
  return (
    <p className={styles.readout} aria-hidden data-testid="readout">
      <span>
        {away} {unitWord}
      </span>
      <span>{Math.round(clockAngleDeg(at)) % 360}°</span>
    </p>
  );
}
