import { useEffect } from 'react';
import { usePage } from '../page/page-context.ts';

/**
 * Undo and redo by keyboard everywhere, in fields too: what a field shows is the design itself, so the browser's
 * own undo of letters would fight with it.
 */
export function useShortcuts(): void {
  const { design, ui } = usePage();
  useEffect(() => {
    function press(event: KeyboardEvent): void {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || ui.getState().page !== 'design') return;
      const key = event.key.toLowerCase();
      const back = key === 'z' && !event.shiftKey;
      const forward = (key === 'z' && event.shiftKey) || (key === 'y' && !event.shiftKey);
      if (!back && !forward) return;
      event.preventDefault();
      if (back) design.getState().undo();
      else design.getState().redo();
    }
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [design, ui]);
}
