import type { Design, Motif } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';
import { typedOrChosen } from './typed-or-chosen.ts';

export type DrawingPart = Partial<Pick<Motif, 'x' | 'y' | 'size' | 'turnDeg' | 'mirrored' | 'around'>>;

/** Sets where a motif or drawing stands, how large, how turned, how often. */
export function setDrawing(design: Design, id: string, part: DrawingPart): Change {
  return {
    design: editElement(design, id, (e) => (e.kind === 'motif' || e.kind === 'artwork' ? { ...e, ...part } : e)),
    undo: typedOrChosen(part),
    about: `drawing:${id}:${Object.keys(part).sort().join()}`,
  };
}

/** Sets one thing about a motif: the points of a star. */
export function setMotifOption(design: Design, id: string, option: string, value: number): Change {
  return {
    design: editElement(design, id, (e) =>
      e.kind === 'motif' ? { ...e, options: { ...e.options, [option]: value } } : e,
    ),
    undo: 'merge',
    about: `motif:${id}:${option}`,
  };
}
