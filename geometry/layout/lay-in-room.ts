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

/** How near the found size comes to the largest, as a share of it; below the least share nobody could read it. */
const NEAR = 0.003;
const LEAST_SHARE = 0.05;

/**
 * An element at the largest size, none larger than asked, at which its outlines keep their distance from all beside it.
 * In: the element, the parts beside it, the plate's radius and the stock's rules, and how it is laid out at a size.
 * Out: its layout; as it was asked for where it comes too near at every size (the checks then say so).
 * Found by halving: its middle stands still, so what is clear at one size is taken to be clear at all smaller ones.
 */
export function layInRoom(
  element: RoomTaker,
  beside: readonly Layout[],
  radiusMm: number,
  rules: LayoutRules,
  lay: (element: DesignElement) => Layout,
): Layout {
  const gapMm = Math.max(element.room * radiusMm, Math.max(rules.leastWebMm, rules.leastBridgeMm) + WEB_SPARE_MM);
  const others = beside.flatMap((part) => part.shapes.map(placedRings));
  const isClear = (laid: Layout) =>
    laid.shapes.every((shape) => {
      const rings = placedRings(shape);
      return others.every((other) => ringsGap(rings, other, gapMm) === undefined);
    });

  const asked = lay(element);
  if (isClear(asked)) return asked;
  let [low, high] = [LEAST_SHARE, 1];
  let best = lay(scaled(element, asked, low, radiusMm));
  if (!isClear(best)) return asked;
  while (high - low > low * NEAR) {
    const share = (low + high) / 2;
    const laid = lay(scaled(element, asked, share, radiusMm));
    if (isClear(laid)) [low, best] = [share, laid];
    else high = share;
  }
  return best;
}

/** So large a share of the size that it came to when nothing was in its way; its middle stays. */
function scaled(element: RoomTaker, asked: Layout, share: number, radiusMm: number): DesignElement {
  if (element.kind === 'motif' || element.kind === 'artwork') return { ...element, size: element.size * share };
  const [extent] = asked.extents;
  if (element.kind === 'lineText') {
    const capMm = extent?.kind === 'box' ? extent.heightMm : element.capHeight * radiusMm;
    return { ...element, capHeight: (capMm * share) / radiusMm };
  }
  const middle = (element.inner + element.outer) / 2;
  const highMm =
    extent?.kind === 'sector' ? extent.outerMm - extent.innerMm : (element.outer - element.inner) * radiusMm;
  const half = (highMm * share) / radiusMm / 2;
  return { ...element, inner: middle - half, outer: middle + half };
}

const flattened = memoize((outline: Outline): readonly Ring[] => flattenOutline(outline, FLATTEN_ERROR_MM));

const placedRings = memoize((shape: PlacedShape): readonly Ring[] =>
  placeRings(flattened(shape.outline), shape.placement),
);
