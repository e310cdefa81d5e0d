import { isText } from '../../../../geometry/design/kinds.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';

/** Sets the extra space after each letter, a share of the cap height. */
export function setTracking(design: Design, id: string, tracking: number): Change {
  const kept = Math.min(2, Math.max(-0.2, tracking));
  return {
    design: editElement(design, id, (e) => (!isText(e) || e.tracking === kept ? e : { ...e, tracking: kept })),
    undo: 'merge',
    about: `tracking:${id}`,
  };
}
