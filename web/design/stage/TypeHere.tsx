import { useEffect, useRef, type KeyboardEvent } from 'react';
import { LONGEST_TEXT } from '../../../geometry/design/limits.ts';
import type { TextElement } from '../../../geometry/design/schema.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import type { SizePx } from '../../ui/size.ts';
import { seenMiddle } from './element-hold.ts';
import styles from './stage.module.css';
import { toScreen, type View } from './canvas/view.ts';

const LEAST_PX = 150;
const MOST_PX = 420;
const HIGH_PX = 44;

/** A text typed right where it stands. Enter or leaving keeps it, Escape gives back what was there. */
export function TypeHere(props: {
  readonly text: TextElement;
  readonly extent: Extent | undefined;
  readonly view: View;
  readonly stage: SizePx;
  readonly label: string;
  readonly onText: (text: string) => void;
  readonly onTyped: (keep: boolean) => void;
}) {
  const { text, extent, view, stage, label, onText, onTyped } = props;
  const field = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  useEffect(() => {
    field.current?.focus({ preventScroll: true });
    field.current?.select();
  }, []);

  const end = (keep: boolean, refocus: boolean) => {
    if (done.current) return;
    done.current = true;
    const box = field.current?.closest<HTMLElement>('[data-plate-stage]');
    onTyped(keep);
    if (refocus) box?.focus({ preventScroll: true });
  };
  const press = (event: KeyboardEvent) => {
    // The stage's own keys and the page's undo wait until the text is typed.
    event.stopPropagation();
    if (event.key !== 'Enter' && event.key !== 'Escape') return;
    event.preventDefault();
    end(event.key === 'Enter', true);
  };

  const at = toScreen(view, extent ? seenMiddle(extent) : { x: 0, y: 0 });
  const width = Math.min(MOST_PX, stage.width - 24, Math.max(LEAST_PX, text.text.length * 12 + 48));
  const left = Math.max(12, Math.min(stage.width - width - 12, at.leftPx - width / 2));
  // Under the letters, so that they are seen while they change; over them where there is no room below.
  const tall =
    (extent === undefined ? 0 : extent.kind === 'box' ? extent.heightMm : extent.outerMm - extent.innerMm) / 2;
  const below = at.topPx + tall * view.scale + 14;
  const top = below + HIGH_PX < stage.height - 8 ? below : at.topPx - tall * view.scale - HIGH_PX - 14;
  return (
    <input
      ref={field}
      className={styles.typing}
      style={{ left, top: Math.max(8, Math.min(stage.height - HIGH_PX - 8, top)), width }}
      aria-label={label}
      value={text.text}
      maxLength={LONGEST_TEXT}
      autoComplete="off"
      spellCheck={false}
      enterKeyHint="done"
      onChange={(event) => onText(event.target.value)}
      onKeyDown={press}
      onBlur={() => end(true, false)}
      onPointerDown={(event) => event.stopPropagation()}
    />
  );
}
