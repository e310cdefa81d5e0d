import type { Design, DesignElement } from '../design/schema.ts';
import { isText } from '../design/kinds.ts';
import type { PlateResult } from '../plate/plate.ts';

type Made = Omit<PlateResult, 'fingerprint'>;

/** Shares of the size that the room allows, tried one after the other: common practice, no source. */
const SHARES = [0.97, 0.93, 0.88, 0.8, 0.7];
/** More places than this that stop the cut are not put right by a hair: the lettering is too small. */
const FEW = 4;

type Sized = Extract<DesignElement, { text: string }>;

/**
 * Lettering that takes the size its room or its span allows is set a little smaller where only then its bridges hold.
 * In: a design and how one of its plates is made. Out: the plate as asked for when it can be cut, or when no size
 * nearby is better; else the first at which the lettering that stopped the cut no longer does.
 */
export function holdLettering(design: Design, make: (design: Design) => Made): Made {
  const asked = make(design);
  let failing = fewStops(design, asked);
  let best = asked;
  const held = new Map<string, DesignElement>();
  for (const share of SHARES) {
    if (failing.length === 0) break;
    const tried = new Map([...held, ...failing.map((e) => [e.id, shrunk(e, asked, share)] as const)]);
    const made = make({ ...design, elements: design.elements.map((e) => tried.get(e.id) ?? e) });
    const still = stopped(made);
    for (const { id } of failing) if (!still.has(id)) held.set(id, tried.get(id)!);
    failing = failing.filter(({ id }) => still.has(id));
    if (still.size < stopped(best).size) best = made;
  }
  return best;
}

function fewStops(design: Design, made: Made): Sized[] {
  const stops = stopped(made);
  return design.elements.filter(isText).filter((e) => takesSize(e) && (stops.get(e.id) ?? Infinity) <= FEW);
}

/** Findings that stop the cut, counted by element. */
function stopped({ findings }: Made): Map<string, number> {
  const count = new Map<string, number>();
  for (const { severity, elementIds } of findings) {
    if (severity === 'stop') for (const id of elementIds) count.set(id, (count.get(id) ?? 0) + 1);
  }
  return count;
}

/** Its size is what fits, not what somebody asked for. */
function takesSize(element: Sized): boolean {
  return element.room !== undefined || (element.fit !== 'natural' && element.fit.by === 'size');
}

/** So much smaller than it came out, about the middle it had. */
function shrunk(element: Sized, { layout, diameterMm }: Made, share: number): DesignElement {
  const extent = layout.extents.find((e) => e.elementId === element.id);
  const radiusMm = diameterMm / 2;
  if (element.kind === 'lineText') {
    const capMm = extent?.kind === 'box' ? extent.heightMm : element.capHeight * radiusMm;
    return { ...element, capHeight: (capMm / radiusMm) * share };
  }
  const bandMm =
    extent?.kind === 'sector' ? extent.outerMm - extent.innerMm : (element.outer - element.inner) * radiusMm;
  const [middle, half] = [(element.inner + element.outer) / 2, ((bandMm / radiusMm) * share) / 2];
  return { ...element, inner: middle - half, outer: middle + half };
}
