import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Finding } from '../../geometry/findings.ts';
import { verdictOf } from '../../geometry/findings.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { regionAreaMm2, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Outline, Ring } from '../../geometry/shapes.ts';
import { FLATTEN_ERROR_MM, GRID_MM } from '../../geometry/units.ts';

/** A whole fingerprint, and as it is shown. */
export const HAND_PRINT = '0a1b2c3d4e5f60718293a4b5c6d7e8f90a1b2c3d4e5f60718293a4b5c6d7e8f9';
export const HAND_PRINT_SHOWN = '0a1b 2c3d 4e5f 6071';

/** A circle as the chain makes it: points on the grid, chords within the flattening error. */
export function circleRing(cx: number, cy: number, radius: number): Ring {
  const n = Math.ceil(Math.PI / Math.acos(1 - FLATTEN_ERROR_MM / radius));
  return Array.from({ length: n }, (_, i) => {
    const rad = (2 * Math.PI * i) / n + 0.1;
    return onGrid({ x: cx + radius * Math.cos(rad), y: cy + radius * Math.sin(rad) });
  });
}

/** Half of a letter O as bridging leaves it: two straight bar edges, an outer and an inner curve, drawn as cubics. */
export function halfLetter(cx: number, cy: number, height: number): Ring {
  const h = height / 2;
  const outline: Outline = [
    { type: 'M', x: 0.08 * h, y: -h },
    { type: 'C', x1: 0.5 * h, y1: -h, x2: 0.78 * h, y2: -0.5 * h, x: 0.78 * h, y: 0 },
    { type: 'C', x1: 0.78 * h, y1: 0.5 * h, x2: 0.5 * h, y2: h, x: 0.08 * h, y: h },
    { type: 'L', x: 0.08 * h, y: 0.86 * h },
    { type: 'C', x1: 0.3 * h, y1: 0.86 * h, x2: 0.48 * h, y2: 0.5 * h, x: 0.48 * h, y: 0 },
    { type: 'C', x1: 0.48 * h, y1: -0.5 * h, x2: 0.3 * h, y2: -0.86 * h, x: 0.08 * h, y: -0.86 * h },
    { type: 'Z' },
  ];
  return flattenOutline(outline, FLATTEN_ERROR_MM)[0]!.map((p) => onGrid({ x: p.x + cx, y: p.y + cy }));
}

/** A straight-sided letter L. */
export function letterL(cx: number, cy: number, height: number): Ring {
  return [
    [0, 0],
    [0.6, 0],
    [0.6, 0.18],
    [0.2, 0.18],
    [0.2, 1],
    [0, 1],
  ].map(([x, y]) => onGrid({ x: cx + x! * height, y: cy + y! * height }));
}

export function mirrored(ring: Ring): Ring {
  return ring.map((p) => ({ x: -p.x, y: p.y })).reverse();
}

/** Beads near the rim, a bridged O and an L: enough of everything that a cut file holds. */
export function handPlate(diameterMm: number, name = 'Large', findings: readonly Finding[] = []): PlateResult {
  const r = diameterMm / 2;
  const beads = Array.from({ length: 24 }, (_, i) => {
    const rad = (i / 24) * 2 * Math.PI;
    return { word: 'beads/0', ring: circleRing(0.88 * r * Math.cos(rad), 0.88 * r * Math.sin(rad), 0.03 * r) };
  });
  const right = halfLetter(0, 0.1 * r, 0.9 * r);
  const rings = [
    ...beads,
    { word: 'initial/0', ring: right },
    { word: 'initial/0', ring: mirrored(right) },
    { word: 'initial/1', ring: letterL(0.45 * r, -0.55 * r, 0.3 * r) },
  ];
  const openings = rings.map(({ word, ring }, i) => ({
    id: `o${i + 1}`,
    elementIds: [word.split('/')[0]!],
    word,
    region: { outer: signedAreaMm2(ring) < 0 ? [...ring].reverse() : ring, holes: [] },
  }));
  const openAreaMm2 = openings.reduce((sum, o) => sum + regionAreaMm2(o.region), 0);
  const metalAreaMm2 = Math.PI * r * r - openAreaMm2;
  return {
    plateId: name.toLowerCase(),
    name,
    diameterMm,
    quantity: 2,
    rules: {
      kerfMm: 0.2,
      leastBridgeMm: 2,
      leastWebMm: 1.5,
      leastOpeningMm: 1,
      leastInsideRadiusMm: 0.1,
      rimMarginMm: 3,
      longestSpanMm: 120,
      thicknessMm: 1.5,
    },
    layout: { shapes: [], extents: [], findings: [] },
    unbridged: [],
    openings,
    bridges: [],
    islands: [],
    measures: {
      openings: openings.length,
      bridges: 2,
      islands: 1,
      leastBridgeMm: 2.05,
      leastWebMm: 3.4,
      leastOpeningMm: 2.2,
      openAreaMm2,
      metalAreaMm2,
      massKg: metalAreaMm2 * 1.5 * 7.93e-6,
    },
    findings,
    verdict: verdictOf(findings),
    fingerprint: HAND_PRINT,
  };
}

export function handDesign(change: Partial<Design> = {}): Design {
  return { ...emptyDesign(), title: 'Marrow Lane Perry', ...change };
}

function onGrid(p: { x: number; y: number }): { x: number; y: number } {
  return { x: Math.round(p.x / GRID_MM) * GRID_MM, y: Math.round(p.y / GRID_MM) * GRID_MM };
}
