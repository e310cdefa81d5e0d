import { usePage } from '../page/page-context.ts';
import { useUndoKeys } from '../ui/use-undo-keys.ts';

/** Undo and redo of the design while its page is in sight. */
export function useShortcuts(): void {
  const { design, ui } = usePage();
  useUndoKeys({
    undo: () => design.getState().undo(),
    redo: () => design.getState().redo(),
    isOn: () => ui.getState().page === 'design',
  });
}
