import { useSyncExternalStore } from 'react';

/** Below this the top bar holds no more than its name, page and steps back: as wide as its longest words need. */
const narrow = matchMedia('(max-width: 763px)');

function watch(tell: () => void): () => void {
  narrow.addEventListener('change', tell);
  return () => narrow.removeEventListener('change', tell);
}

/** Whether this is a phone held upright, or a window as narrow. */
export function useCompact(): boolean {
  return useSyncExternalStore(watch, () => narrow.matches);
}
