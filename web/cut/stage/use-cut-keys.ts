import { useEffect } from 'react';
import { useCutParts } from '../state/cut-context.ts';

/** Undo and redo of what was moved by hand. */
export function useCutKeys(): void {
  const { work } = useCutParts();
  useEffect(() => {
    function press(event: KeyboardEvent): void {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const back = key === 'z' && !event.shiftKey;
      const forward = (key === 'z' && event.shiftKey) || (key === 'y' && !event.shiftKey);
      if (!back && !forward) return;
      event.preventDefault();
      if (back) work.undo();
      else work.redo();
    }
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [work]);
}
