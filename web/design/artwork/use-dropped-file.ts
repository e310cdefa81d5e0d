import { useEffect } from 'react';
import { begin } from './import-store.ts';

/** A drawing or picture dropped anywhere on the page is looked at; the browser never leaves the page for it. */
export function useDroppedFile(): void {
  useEffect(() => {
    const over = (e: DragEvent): void => {
      if (e.dataTransfer?.types.includes('Files')) e.preventDefault();
    };
    const drop = (e: DragEvent): void => {
      const file = e.dataTransfer?.files[0];
      if (file === undefined || e.defaultPrevented) return;
      e.preventDefault();
      begin({ kind: 'file', file });
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  }, []);
}
