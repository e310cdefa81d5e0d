import { ringHolds, signedAreaMm2 } from '../../../geometry/measure/ring.ts';
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
  return pieces
    .filter((piece) => ringHolds(piece, first))
    .sort((a, b) => Math.abs(signedAreaMm2(a)) - Math.abs(signedAreaMm2(b)))[0];
}
