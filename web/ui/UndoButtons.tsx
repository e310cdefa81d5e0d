import { Redo2, Undo2 } from 'lucide-react';
import { IconButton } from './IconButton.tsx';

interface UndoButtonsProps {
  readonly undoName: string;
  readonly redoName: string;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** A step back and a step forward in what was edited. */
export function UndoButtons({ undoName, redoName, canUndo, canRedo, undo, redo }: UndoButtonsProps) {
  return (
    <>
      <IconButton
        label={undoName}
        sign={Undo2}
        size={20}
        aria-keyshortcuts="Control+Z Meta+Z"
        disabled={!canUndo}
        onClick={undo}
      />
      <IconButton
        label={redoName}
        sign={Redo2}
        size={20}
        aria-keyshortcuts="Control+Shift+Z Meta+Shift+Z"
        disabled={!canRedo}
        onClick={redo}
      />
    </>
  );
}
