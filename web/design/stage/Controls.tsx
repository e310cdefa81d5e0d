import { Maximize, Minus, Plus } from 'lucide-react';
import styles from './stage.module.css';
import type { StageWords } from './words.ts';

export interface ControlsProps {
  readonly words: StageWords;
  readonly zoomed: boolean;
  readonly atLimit: boolean;
  readonly onZoom: (factor: number) => void;
  readonly onWhole: () => void;
}

/** Buttons over the canvas, for thumbs, keyboards and readers. */
export function Controls({ words, zoomed, atLimit, onZoom, onWhole }: ControlsProps) {
  return (
    <div className={styles.controls}>
      <button
        type="button"
        aria-label={words.zoomIn}
        title={words.zoomIn}
        disabled={atLimit}
        onClick={() => onZoom(1.5)}
      >
        <Plus size={17} strokeWidth={1.75} aria-hidden />
      </button>
      <button
        type="button"
        aria-label={words.zoomOut}
        title={words.zoomOut}
        disabled={!zoomed}
        onClick={() => onZoom(1 / 1.5)}
      >
        <Minus size={17} strokeWidth={1.75} aria-hidden />
      </button>
      <button type="button" aria-label={words.whole} title={words.whole} disabled={!zoomed} onClick={onWhole}>
        <Maximize size={15} strokeWidth={1.75} aria-hidden />
      </button>
    </div>
  );
}
