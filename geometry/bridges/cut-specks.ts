import { ringHolds, signedAreaMm2 } from '../measure/ring.ts';
import type { Region, Ring } from '../shapes.ts';

/** Openings whose holes named as specks are cut away with the slug, and with a speck the openings inside it. */
export function cutSpecks(openings: readonly Region[], specks: readonly Ring[]): readonly Region[] {
  if (specks.length === 0) return openings;
  const gone = new Set(specks);
  return openings
    .filter((opening) => !specks.some((speck) => liesInside(opening, speck)))
    .map(({ outer, holes }) => ({ outer, holes: holes.filter((hole) => !gone.has(hole)) }));
}

function liesInside({ outer }: Region, speck: Ring): boolean {
  return (
    Math.abs(signedAreaMm2(outer)) < Math.abs(signedAreaMm2(speck)) &&
    ringHolds(speck, outer[0]!) &&
    ringHolds(speck, outer[Math.floor(outer.length / 2)]!)
  );
}
