import type { Design, PlateSpec } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { typedOrChosen } from '../elements/typed-or-chosen.ts';

export function setPlate(design: Design, plateId: string, part: Partial<Omit<PlateSpec, 'id'>>): Change {
  return {
    design: { ...design, plates: design.plates.map((p) => (p.id === plateId ? { ...p, ...part } : p)) },
    undo: part.name === undefined ? typedOrChosen(part) : 'merge',
    about: `plate:${plateId}:${Object.keys(part).sort().join()}`,
  };
}
