import type { BuiltBar } from '../../geometry/bridges/solved-unit.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design, DesignElement } from '../../geometry/design/schema.ts';
import type { Point, Region, Ring } from '../../geometry/shapes.ts';

// Moves of drawings and designs, and how far bridges lie from where a move puts them.

/** A move takes the bridges with it: to this, the grid and the rounding of a turn. */
export const SAME_MM = 0.002;

export type Move = (p: Point) => Point;

export function moved(regions: readonly Region[], move: Move): Region[] {
  return regions.map((r) => ({ outer: r.outer.map(move), holes: r.holes.map((h) => h.map(move)) }));
}

/** A mirror reverses the direction of rings: they are turned back. */
export function mirrored(regions: readonly Region[], move: Move): Region[] {
  return moved(regions, move).map((r) => ({
    outer: [...r.outer].reverse(),
    holes: r.holes.map((h) => [...h].reverse()),
  }));
}

/** Regions and holes in another order, every ring begun elsewhere. */
export function reordered(regions: readonly Region[]): Region[] {
  const later = (ring: Ring) => {
    const at = Math.floor(ring.length / 3);
    return [...ring.slice(at), ...ring.slice(0, at)];
  };
  return [...regions].reverse().map((r) => ({ outer: later(r.outer), holes: r.holes.map(later).reverse() }));
}

type Ends = Pick<BuiltBar, 'from' | 'to'>;

/** Distance of each bar, moved, from its like in the other list, mm. */
export function offAfter(after: readonly Ends[], before: readonly Ends[], move: Move): number[] {
  const gap = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y);
  return before.map((bar) => {
    const [from, to] = [move(bar.from), move(bar.to)];
    return Math.min(
      ...after.map((b) =>
        Math.min(Math.max(gap(b.from, from), gap(b.to, to)), Math.max(gap(b.to, from), gap(b.from, to))),
      ),
    );
  });
}

/** Texts round the rim, read outward and inward, and one across the middle. */
export const ELEMENTS: readonly DesignElement[] = [
  ringText('top', 'Perry & Old Oak', 'playfair-display-700', 0),
  ringText('bottom', 'CASK 2086', 'stardos-stencil-700', 180),
  {
    kind: 'lineText',
    id: 'line',
    text: 'O & B',
    face: 'abril-fatface-400',
    x: 0,
    y: 0,
    capHeight: 0.3,
    turnDeg: 0,
    tracking: 0,
    fit: 'natural',
  },
];

function ringText(id: string, text: string, face: string, middleDeg: number): DesignElement {
  const reads = middleDeg === 0 ? 'outward' : 'inward';
  const [inner, outer] = [0.65, 0.79];
  return { kind: 'ringText', id, text, face, inner, outer, middleDeg, reads, tracking: 0.04, fit: 'natural' };
}

export function turned(element: DesignElement, deg: number): DesignElement {
  if (element.kind === 'ringText') return { ...element, middleDeg: element.middleDeg + deg };
  return element.kind === 'lineText' ? { ...element, turnDeg: element.turnDeg + deg } : element;
}

export function designWith(elements: readonly DesignElement[]): Design {
  return {
    ...emptyDesign(),
    plates: [{ id: 'plate', name: 'Plate', diameter: { mm: 400 }, quantity: 1 }],
    elements: [...elements],
  };
}
