import { useEffect } from 'react';

/** A file dropped beside its place must not make the browser leave the page for it. */
export function useNoStrayDrop(): void {
  useEffect(() => {
    const stay = (e: DragEvent): void => {
      if (e.dataTransfer?.types.includes('Files')) e.preventDefault();
    };
    addEventListener('dragover', stay);
    addEventListener('drop', stay);
    return () => {
      removeEventListener('dragover', stay);
      removeEventListener('drop', stay);
    };
  }, []);
}
