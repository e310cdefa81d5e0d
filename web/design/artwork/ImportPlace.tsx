import { lazy, Suspense } from 'react';
import { useStore } from 'zustand';
import { withWords } from '../../words/t.ts';
import { importing } from './import-store.ts';
import { useDroppedFile } from './use-dropped-file.ts';

const MotifPicker = lazy(async () => ({ default: (await withWords(import('./MotifPicker.tsx'), 'work')).MotifPicker }));
const FileDialog = lazy(async () => ({ default: (await withWords(import('./FileDialog.tsx'), 'work')).FileDialog }));

/** Where motifs are picked and files looked at; loaded when first needed. */
export function ImportPlace() {
  useDroppedFile();
  const now = useStore(importing, (s) => s.now);
  if (now === undefined) return null;
  return (
    <Suspense fallback={null}>
      {now.kind === 'motif' ? (
        <MotifPicker inPlaceOf={now.inPlaceOf} />
      ) : (
        <FileDialog key={`${now.file.name}${now.file.lastModified}`} file={now.file} inPlaceOf={now.inPlaceOf} />
      )}
    </Suspense>
  );
}
