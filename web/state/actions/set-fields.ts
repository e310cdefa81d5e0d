/** Actions that set fields of a record of the design. Runs of the same fields are one step of undo. */
import type { Border, Design, DesignElement, LineText, Motif, RingText } from '../../../geometry/design/schema.ts';
import type { Change } from '../change.ts';
import { editElement } from './elements/edit-element.ts';
import { typedOrChosen } from './elements/typed-or-chosen.ts';

export type BorderPart = Partial<Pick<Border, 'style' | 'count'>>;
export type LineTextPart = Partial<Pick<LineText, 'x' | 'y' | 'capHeight' | 'turnDeg' | 'fit'>>;
export type RingTextPart = Partial<Pick<RingText, 'middleDeg' | 'reads' | 'fit'>>;
export type DrawingPart = Partial<Pick<Motif, 'x' | 'y' | 'size' | 'turnDeg' | 'mirrored' | 'around'>>;

export const setBorder = elementSetter<BorderPart>('border');

export const setLineText = elementSetter<LineTextPart>('lineText');

export const setRingText = elementSetter<RingTextPart>('ringText');

/** Sets where a motif or drawing stands, how large, how turned, how often. */
export const setDrawing = elementSetter<DrawingPart>('motif', 'artwork');

/** Sets the clearance left on each side, how far the head bulges, or how deep it lies; mm. */
export const setHead = recordSetter('head');

/** Sets material, thickness, process or use. */
export const setStock = recordSetter('stock');

export const setBridges = recordSetter('bridges');

/** Types into the order: who, reference, needed by, notes. None of it changes what is cut. */
export const setOrder = recordSetter('order', () => 'merge');

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

/** An element of another kind stays as it is. */
function elementSetter<Part extends object>(...kinds: readonly DesignElement['kind'][]) {
  return (design: Design, id: string, part: Part): Change => ({
    design: editElement(design, id, (e) => (kinds.includes(e.kind) ? { ...e, ...part } : e)),
    undo: typedOrChosen(part),
    about: `element:${id}:${fieldsOf(part)}`,
  });
}

function recordSetter<Key extends 'head' | 'stock' | 'bridges' | 'order'>(key: Key, undo = typedOrChosen) {
  return (design: Design, part: Partial<Design[Key]>): Change => ({
    design: { ...design, [key]: { ...design[key], ...part } },
    undo: undo(part),
    about: `${key}:${fieldsOf(part)}`,
  });
}

function fieldsOf(part: object): string {
  return Object.keys(part).sort().join();
}
