import { polylinePoints, readDxf } from '../tests/readers/dxf-reader.ts';

/** What an independent reader finds in a cut file. */
export interface MeasuredDxf {
  /** 4 means millimetres (DXF reference, header variable $INSUNITS). */
  readonly units: number;
  readonly rimDiametersMm: readonly number[];
  /** Closed contours that are not the rim. */
  readonly openings: number;
  /** Open contours, or entities of another kind: a cut file has none. */
  readonly strays: number;
  /** Contours inside another contour: metal that would fall out. */
  readonly looseParts: number;
  readonly fingerprint: string | undefined;
}

/** What every cut file of one plate has: millimetres, closed contours only, no metal that would fall out. */
export const SOUND = { units: 4, strays: 0, looseParts: 0 } as const;

type Points = readonly { readonly x: number; readonly y: number }[];

export function measureDxf(text: string): MeasuredDxf {
  const { header, entities } = readDxf(text);
  const rims = entities.filter(({ type, layer }) => type === 'CIRCLE' && layer === 'RIM');
  const openings = entities.filter(({ type, layer, shape }) => type === 'LWPOLYLINE' && layer === 'OPENINGS' && shape);
  const rings = openings.map((entity) => polylinePoints(entity, 0.5));
  return {
    units: Number(header['$INSUNITS']),
    rimDiametersMm: rims.map(({ radius = NaN }) => radius * 2),
    openings: openings.length,
    strays: entities.length - rims.length - openings.length,
    looseParts: rings.filter((ring, i) => rings.some((other, j) => j !== i && holds(other, ring))).length,
    fingerprint: /^Fingerprint: ([0-9a-f ]{19})/m.exec(text)?.[1],
  };
}

/** Even-odd test of the inner ring's first point. */
function holds(ring: Points, inner: Points): boolean {
  const p = inner[0];
  if (!p) return false;
  let inside = false;
  ring.forEach((b, i) => {
    const a = ring.at(i - 1) ?? b;
    if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  });
  return inside;
}
