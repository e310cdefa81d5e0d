import { createContext, useContext } from 'react';
import type { Unit } from '../../words/preferences.ts';

/** What every field asks for by itself. */
export interface EditSurroundings {
  /** In which lengths are typed and shown. */
  readonly unit: Unit;
  /** The field was left: the next change is an undo step of its own. */
  readonly endEdit: () => void;
}

export const EditContext = createContext<EditSurroundings>({ unit: 'mm', endEdit: () => undefined });

export function useEditSurroundings(): EditSurroundings {
  return useContext(EditContext);
}
