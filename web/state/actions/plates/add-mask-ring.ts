import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { t } from '../../../words/t.ts';
import { MOST_PLATES } from './add-plate.ts';
import { freeId } from '../elements/free-id.ts';

const LONGEST_NAME = 60;

/** Adds a ring that keeps paint off the head around one plate; nothing happens when there is one or no room for it. */
export function addMaskRing(design: Design, plateId: string): Change {
  const plate = design.plates.find((p) => p.id === plateId && p.masks === undefined);
  const has = design.plates.some((p) => p.masks === plateId);
  if (!plate || has || design.plates.length >= MOST_PLATES) return { design, undo: 'step' };
  const name = [...t('barrel.mask.name', { name: plate.name })].slice(0, LONGEST_NAME).join('');
  const ring = { id: freeId(design.plates, 'plate'), name, diameter: 'fit', quantity: 1, masks: plateId } as const;
  return { design: { ...design, plates: [...design.plates, ring] }, undo: 'step' };
}
