import type { PlacedShape } from '../layout/placed.ts';
import { unplacePoint } from '../measure/clock.ts';
import { castRay, edgeGrid } from '../measure/edge-grid.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { regionHolds, ringHolds } from '../measure/ring.ts';
import type { Point, Region } from '../shapes.ts';
import { FLATTEN_ERROR_MM } from '../units.ts';
import type { BridgedPlate, HandBridge } from './edit-terms.ts';

/** Directions tried for a new bridge, over half a turn. */
const DIRECTIONS = 72;

/**
 * A bridge straight across the stroke at a place a person points at: of all lines through it the one that crosses the
 * least opening, as wide as the rule asks, with both ends half a width in the metal.
 * In: place in the plate's frame, mm; the plate with what would be cut without bridges. Out: the bridge and its shape;
 * undefined where nothing is cut away.
 */
export function bridgeAcross(
  at: Point,
  plate: BridgedPlate & { readonly unbridged: readonly Region[] },
): (HandBridge & { readonly shapeId: string }) | undefined {
  const region = plate.unbridged.find((r) => regionHolds(r, at));
  const shape = region && shapeAt(at, plate.layout.shapes);
  if (!region || !shape) return undefined;
  const widthMm = plate.rules.leastBridgeMm;
  const line = shortestAcross(at, region, widthMm / 2);
  return line && { shapeId: shape.id, ...line, widthMm };
}

/** The shape cut away at a place; contours of one letter may overlap, so one that holds the place at all will do. */
function shapeAt(at: Point, shapes: readonly PlacedShape[]): PlacedShape | undefined {
  const holding = shapes.flatMap((shape) => {
    const own = unplacePoint(at, shape.placement);
    const held = flattenOutline(shape.outline, FLATTEN_ERROR_MM).filter((ring) => ringHolds(ring, own)).length;
    return held > 0 ? [{ shape, odd: held % 2 === 1 }] : [];
  });
  return (holding.find((h) => h.odd) ?? holding[0])?.shape;
}

function shortestAcross(at: Point, region: Region, beyondMm: number): { from: Point; to: Point } | undefined {
  const rings = [region.outer, ...region.holes];
  const grid = edgeGrid(
    rings,
    rings.map(() => 0),
  );
  let best: { from: Point; to: Point } | undefined;
  let least = Infinity;
  for (let i = 0; i < DIRECTIONS; i++) {
    const angle = (i * Math.PI) / DIRECTIONS;
    const [dx, dy] = [Math.sin(angle), Math.cos(angle)];
    const ahead = castRay(grid, at, dx, dy)[0];
    const behind = castRay(grid, at, -dx, -dy)[0];
    if (!ahead || !behind || ahead.at + behind.at >= least) continue;
    least = ahead.at + behind.at;
    best = {
      from: { x: at.x - dx * (behind.at + beyondMm), y: at.y - dy * (behind.at + beyondMm) },
      to: { x: at.x + dx * (ahead.at + beyondMm), y: at.y + dy * (ahead.at + beyondMm) },
    };
  }
  return best;
}
