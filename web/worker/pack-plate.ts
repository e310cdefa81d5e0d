import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Point, Region, Ring } from '../../geometry/shapes.ts';

/**
 * A plate on its way from the worker to the page. Points as records are slow to copy between threads, and the page must
 * not stand still while somebody types: so all rings go as one array of numbers, which is handed over and not copied.
 */
export interface PackedPlate {
  /** The plate, its rings without points. */
  readonly plate: PlateResult;
  /** How many points each ring has, in the order in which eachRing comes to it. */
  readonly lengths: Uint32Array;
  /** x and y of all points in turn, mm. */
  readonly xy: Float64Array<ArrayBuffer>;
}

export function packPlate(plate: PlateResult): PackedPlate {
  const rings: Ring[] = [];
  const bare = eachRing(plate, (ring) => {
    rings.push(ring);
    return NO_POINTS;
  });
  const lengths = Uint32Array.from(rings, (ring) => ring.length);
  const xy = new Float64Array(2 * lengths.reduce((sum, n) => sum + n, 0));
  let at = 0;
  for (const ring of rings) {
    for (const p of ring) {
      xy[at++] = p.x;
      xy[at++] = p.y;
    }
  }
  return { plate: bare, lengths, xy };
}

export function unpackPlate({ plate, lengths, xy }: PackedPlate): PlateResult {
  let [next, at] = [0, 0];
  return eachRing(plate, () => {
    const ring: Point[] = [];
    for (let n = lengths[next++] ?? 0; n > 0; n--, at += 2) ring.push({ x: xy[at]!, y: xy[at + 1]! });
    return ring;
  });
}

const NO_POINTS: Ring = [];

/** The plate with another ring for each ring of its openings, drawn and cut, and of its bridges. */
function eachRing(plate: PlateResult, turn: (ring: Ring) => Ring): PlateResult {
  const region = (r: Region): Region => ({ outer: turn(r.outer), holes: r.holes.map(turn) });
  return {
    ...plate,
    unbridged: plate.unbridged.map(region),
    openings: plate.openings.map((o) => ({ ...o, region: region(o.region) })),
    bridges: plate.bridges.map((b) => ({ ...b, outline: turn(b.outline) })),
  };
}
