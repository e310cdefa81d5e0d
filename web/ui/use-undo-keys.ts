import { useEffect } from 'react';

interface UndoKeys {
  readonly undo: () => void;
  readonly redo: () => void;
  /** Absent: always. */
  readonly isOn?: () => boolean;
}

/**
 * Undo and redo by keyboard everywhere, in fields too: what a field shows is the design itself, so the browser's
 * own undo of letters would fight with it.
 */
export function useUndoKeys({ undo, redo, isOn }: UndoKeys): void {
  useEffect(() => {
    function press(event: KeyboardEvent): void {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isOn?.() === false) return;
      const key = event.key.toLowerCase();
      const back = key === 'z' && !event.shiftKey;
      const forward = (key === 'z' && event.shiftKey) || (key === 'y' && !event.shiftKey);
      if (!back && !forward) return;
      event.preventDefault();
      if (back) undo();
      else redo();
    }
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [undo, redo, isOn]);
}
