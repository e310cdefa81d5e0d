import { useStore } from 'zustand';
import { later } from '../../ui/later.tsx';
import { withWords } from '../../words/t.ts';
import { end, importing } from './import-store.ts';
import { useDroppedFile } from './use-dropped-file.ts';

const MotifPicker = later(async () => (await withWords(import('./MotifPicker.tsx'), 'work')).MotifPicker);
const FileDialog = later(async () => (await withWords(import('./FileDialog.tsx'), 'work')).FileDialog);

/** Where motifs are picked and files looked at; loaded when first needed. */
export function ImportPlace() {
  useDroppedFile();
  const now = useStore(importing, (s) => s.now);
  if (now === undefined) return null;
  return now.kind === 'motif' ? (
    <MotifPicker inPlaceOf={now.inPlaceOf} onGiveUp={end} />
  ) : (
    <FileDialog
      key={`${now.file.name}${now.file.lastModified}`}
      file={now.file}
      inPlaceOf={now.inPlaceOf}
      onGiveUp={end}
    />
  );
}
