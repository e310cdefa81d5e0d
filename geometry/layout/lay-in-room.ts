import { memoize } from '../cache.ts';
import type { DesignElement } from '../design/schema.ts';
import { ringsGap } from '../measure/distance.ts';
import { flattenOutline } from '../measure/flatten.ts';
import type { Outline, Ring } from '../shapes.ts';
import { FLATTEN_ERROR_MM, WEB_SPARE_MM } from '../units.ts';
import type { LayoutRules } from './layout-rules.ts';
import type { Layout, PlacedShape } from './placed.ts';
import { placeRings } from './rail.ts';

/** Lettering and drawings that say how much metal they leave to all else. */
export type RoomTaker = Exclude<DesignElement, { kind: 'border' }> & { readonly room: number };

export function takesRoom(element: DesignElement): element is RoomTaker {
  return element.kind !== 'border' && element.room !== undefined;
}

type Shapes = Layout['shapes'];

/** Sizes go by whole steps, so that the same letter beside other letters is often the very same shape, already bridged. */
const STEP_MM = 0.25;
/** Below this share of what was asked nobody could read it. */
const LEAST_SHARE = 0.05;

/**
 * An element at the largest size by steps, none larger than asked, at which its outlines keep their distance from all beside it.
 * In: the element, the shapes of all parts beside it, the plate's radius and the stock's rules, and how it is laid out at a size.
 * Out: its layout; as it was asked for where it comes too near at every size (the checks then say so).
 * Found by halving: its middle stands still, so what is clear at one size is taken to be clear at all smaller ones.
 */
export function layInRoom(
  element: RoomTaker,
  beside: readonly Shapes[],
  radiusMm: number,
  rules: LayoutRules,
  lay: (element: DesignElement) => Layout,
): Layout {
  const gapMm = Math.max(element.room * radiusMm, Math.max(rules.leastWebMm, rules.leastBridgeMm) + WEB_SPARE_MM);
  const isClear = ({ shapes }: Layout) => beside.every((others) => keepApart(shapes, others, gapMm));

  const asked = lay(element);
  if (isClear(asked)) return asked;
  const sizeMm = sizeOf(element, asked, radiusMm);
  const at = (steps: number) => lay(sized(element, (steps * STEP_MM) / radiusMm));
  let [low, high] = [Math.ceil((LEAST_SHARE * sizeMm) / STEP_MM), Math.ceil(sizeMm / STEP_MM)];
  let best = at(low);
  if (!isClear(best)) return asked;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const laid = at(middle);
    if (isClear(laid)) [low, best] = [middle, laid];
    else high = middle;
  }
  return best;
}

/** Height of capitals or drawing, mm, that it came to when nothing was in its way. */
function sizeOf(element: RoomTaker, asked: Layout, radiusMm: number): number {
  const [extent] = asked.extents;
  if (element.kind === 'lineText') return extent?.kind === 'box' ? extent.heightMm : element.capHeight * radiusMm;
  if (element.kind !== 'ringText') return element.size * radiusMm;
  return extent?.kind === 'sector' ? extent.outerMm - extent.innerMm : (element.outer - element.inner) * radiusMm;
}

/** The element so high (share of the radius), its middle where it was. */
function sized(element: RoomTaker, size: number): DesignElement {
  if (element.kind === 'lineText') return { ...element, capHeight: size };
  if (element.kind !== 'ringText') return { ...element, size };
  const middle = (element.inner + element.outer) / 2;
  return { ...element, inner: middle - size / 2, outer: middle + size / 2 };
}

/** Asked once for each two parts that stand where they stood: a keystroke moves one of them. */
function keepApart(shapes: Shapes, others: Shapes, gapMm: number): boolean {
  const known = apartFrom(shapes).get(others);
  if (known?.gapMm === gapMm) return known.apart;
  const rings = others.map(placedRings);
  const apart = shapes.every((shape) => rings.every((r) => ringsGap(placedRings(shape), r, gapMm) === undefined));
  apartFrom(shapes).set(others, { gapMm, apart });
  return apart;
}

const apartFrom = memoize(
  (_shapes: Shapes) => new WeakMap<Shapes, { readonly gapMm: number; readonly apart: boolean }>(),
);

const flattened = memoize((outline: Outline): readonly Ring[] => flattenOutline(outline, FLATTEN_ERROR_MM));

const placedRings = memoize((shape: PlacedShape): readonly Ring[] =>
  placeRings(flattened(shape.outline), shape.placement),
);
