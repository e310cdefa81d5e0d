import type { Design, Manner } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from '../elements/edit-element.ts';

/** Sets how one element is bridged; undefined: as the whole design. */
export function setManner(design: Design, id: string, manner: Manner | undefined): Change {
  return {
    design: editElement(design, id, (element) => {
      if (element.manner === manner) return element;
      const { manner: _, ...rest } = element;
      return manner === undefined ? rest : { ...rest, manner };
    }),
    undo: 'step',
  };
}
