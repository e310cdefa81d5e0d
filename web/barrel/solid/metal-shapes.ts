import type { Region, Ring } from '../../../geometry/shapes.ts';

const RIM_POINTS = 192;

/**
 * The metal of a plate as areas with holes: the round less all openings, and each piece of metal inside an opening.
 * In: openings in the plate's frame, the plate's radius in mm. The rim is a polygon of 192 sides.
 */
export function metalShapes(openings: readonly Region[], radiusMm: number): readonly Region[] {
  const pieces = openings.flatMap((o) => o.holes.map((hole) => [...hole].reverse()));
  const holesOf = (inside: Ring | undefined) =>
    openings.filter((o) => innermost(pieces, o) === inside).map((o) => [...o.outer].reverse());
  const round = Array.from({ length: RIM_POINTS }, (_, i) => {
    const angle = (i / RIM_POINTS) * 2 * Math.PI;
    return { x: radiusMm * Math.cos(angle), y: radiusMm * Math.sin(angle) };
  });
  return [
    { outer: round, holes: holesOf(undefined) },
    ...pieces.map((piece) => ({ outer: piece, holes: holesOf(piece) })),
  ];
}

/** The smallest piece of metal that an opening is cut in, if it lies in one. */
function innermost(pieces: readonly Ring[], opening: Region): Ring | undefined {
  const first = opening.outer[0];
  if (!first) return undefined;
  // Its own pieces lie inside it, so none of them contains a point of its outer ring.
  return pieces.filter((piece) => contains(piece, first.x, first.y)).sort((a, b) => area(a) - area(b))[0];
}

function contains(ring: Ring, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [a, b] = [ring[i], ring[j]];
    if (a && b && a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

function area(ring: Ring): number {
  return Math.abs(
    ring.reduce((sum, a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      return sum + a.x * b.y - a.y * b.x;
    }, 0) / 2,
  );
}
