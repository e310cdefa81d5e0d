import { Plus } from 'lucide-react';
import { begin } from '../../artwork/import-store.ts';
import { Button } from '../../../ui/Button.tsx';
import { FileButton } from '../../../ui/FileButton.tsx';
import { t } from '../../../words/t.ts';

/** Kinds of file that a file chooser offers; what a file is, is told by what is in it. */
const TAKEN = '.svg,.png,.jpg,.jpeg,.webp,image/svg+xml,image/png,image/jpeg,image/webp';

interface AddDrawingProps {
  readonly inPlaceOf?: string;
  /** The other only stands in until the person brings a drawing of their own. */
  readonly standsIn?: boolean;
}

/** Adds a motif of ours, or a drawing from a file; or puts one in the place of another. */
export function AddDrawing({ inPlaceOf, standsIn = false }: AddDrawingProps) {
  const replacing = inPlaceOf !== undefined;
  return (
    <>
      <Button kind="plain" onClick={() => begin({ kind: 'motif', inPlaceOf })}>
        {!replacing && <Plus size={16} aria-hidden />} {t(replacing ? 'artwork.otherMotif' : 'artwork.addMotif')}
      </Button>
      <FileButton
        accept={TAKEN}
        testId={replacing ? 'replace-drawing-file' : 'drawing-file'}
        onFiles={([file]) => file && begin({ kind: 'file', file, inPlaceOf })}
      >
        {!replacing && <Plus size={16} aria-hidden />}{' '}
        {t(standsIn ? 'artwork.ownFile' : replacing ? 'artwork.otherFile' : 'artwork.addFile')}
      </FileButton>
    </>
  );
}
