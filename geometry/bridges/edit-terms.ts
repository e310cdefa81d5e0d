import type { BridgeEdit } from '../design/schema.ts';
import type { Layout, PlacedShape } from '../layout/placed.ts';
import { placePoint, unplacePoint } from '../measure/clock.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { joinBoxes, ringBox } from '../measure/ring.ts';
import type { Box, Point } from '../shapes.ts';
import { FLATTEN_ERROR_MM, LEAST_DIVISOR_MM } from '../units.ts';
import type { Bridge } from './types.ts';

/** The widest bridge by hand, in least widths: the schema's own limit. */
export const WIDEST_SHARE = 8;

/** A place in terms of a shape's own box: 0 to 1 across and up it. */
type ShapeTerms = Point;

/** Number of a shape in its element (PlacedShape.id is elementId/number). */
function shapeNumber(shape: PlacedShape): number {
  return Number(shape.id.slice(shape.elementId.length + 1));
}

/** Box of the shape's outline in the shape's own frame, mm. */
export function shapeBox(shape: PlacedShape): Box {
  return joinBoxes(flattenOutline(shape.outline, FLATTEN_ERROR_MM).map(ringBox));
}

/** From shares of the box to the shape's own frame, mm. */
export function fromTerms(at: ShapeTerms, box: Box): Point {
  return { x: box.minX + at.x * (box.maxX - box.minX), y: box.minY + at.y * (box.maxY - box.minY) };
}

/** From shares of the shape's box to the plate's frame, mm: the inverse of what an edit is kept in. */
export function onPlate(at: ShapeTerms, shape: PlacedShape): Point {
  return placePoint(fromTerms(at, shapeBox(shape)), shape.placement);
}

/** What of a finished plate an edit is read from; any PlateResult fits. */
export interface BridgedPlate {
  readonly layout: Layout;
  readonly rules: { readonly leastBridgeMm: number };
}

/** A bridge as a person wants it on one plate; mm, plate frame. */
export interface HandBridge {
  readonly from: Point;
  readonly to: Point;
  readonly widthMm: number;
}

/**
 * The edit that keeps a bridge of a plate where it is, or where a person moved it.
 * In: the bridge, its plate, an id for the edit, and what was moved, mm in the plate's frame.
 * Out: an edit in terms of the shape the bridge stands on; undefined when the plate has no such shape.
 * An edit of the same bridge keeps its own id.
 */
export function keepFrom(
  bridge: Pick<Bridge, 'shapeId' | 'editId'> & HandBridge,
  plate: BridgedPlate,
  id: string,
  moved: Partial<HandBridge> = {},
): BridgeEdit | undefined {
  const shape = plate.layout.shapes.find((s) => s.id === bridge.shapeId);
  if (!shape) return undefined;
  const box = shapeBox(shape);
  const line = inRange(toTerms(moved.from ?? bridge.from, shape, box), toTerms(moved.to ?? bridge.to, shape, box));
  const share = (moved.widthMm ?? bridge.widthMm) / plate.rules.leastBridgeMm;
  return {
    kind: 'keep',
    ...nameOf(shape),
    id: bridge.editId ?? id,
    ...line,
    widthShare: round(clamp(share, 1, WIDEST_SHARE)),
  };
}

/** The edit that bars the tool from a bridge's place; undefined when the plate has no such shape. */
export function dropFrom(
  bridge: Pick<Bridge, 'shapeId'> & Pick<HandBridge, 'from' | 'to'>,
  plate: BridgedPlate,
  id: string,
): BridgeEdit | undefined {
  const shape = plate.layout.shapes.find((s) => s.id === bridge.shapeId);
  if (!shape) return undefined;
  const middle = { x: (bridge.from.x + bridge.to.x) / 2, y: (bridge.from.y + bridge.to.y) / 2 };
  const at = toTerms(middle, shape, shapeBox(shape));
  return { kind: 'drop', ...nameOf(shape), id, at: { x: inBounds(at.x), y: inBounds(at.y) } };
}

/** How far outside its box a place may lie: the schema's own limits. */
const [LOWEST, HIGHEST] = [-1, 2];

function nameOf(shape: PlacedShape): { element: string; shape: number; label: string } {
  return { element: shape.elementId, shape: shapeNumber(shape), label: shape.label.slice(0, 60) };
}

function toTerms(p: Point, shape: PlacedShape, box: Box): ShapeTerms {
  const own = unplacePoint(p, shape.placement);
  const share = (v: number, low: number, high: number) => (v - low) / Math.max(high - low, LEAST_DIVISOR_MM);
  return { x: share(own.x, box.minX, box.maxX), y: share(own.y, box.minY, box.maxY) };
}

/** A line that sticks out too far is shortened about its middle: only where it runs is kept, not how far. */
function inRange(from: ShapeTerms, to: ShapeTerms): { from: ShapeTerms; to: ShapeTerms } {
  const middle = { x: inBounds((from.x + to.x) / 2), y: inBounds((from.y + to.y) / 2) };
  const half = { x: (to.x - from.x) / 2, y: (to.y - from.y) / 2 };
  const room = (m: number, h: number) => (h === 0 ? 1 : Math.min(1, Math.min(HIGHEST - m, m - LOWEST) / Math.abs(h)));
  const part = Math.max(0.01, Math.min(room(middle.x, half.x), room(middle.y, half.y)));
  const at = (sign: number) => ({
    x: inBounds(middle.x + sign * part * half.x),
    y: inBounds(middle.y + sign * part * half.y),
  });
  return { from: at(-1), to: at(1) };
}

function inBounds(v: number): number {
  return round(clamp(v, LOWEST, HIGHEST));
}

function clamp(v: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, v));
}

/** Six decimals: a hundredth of a micrometre on a letter of 10 mm, and short in a link. */
function round(v: number): number {
  return Math.round(v * 1e6) / 1e6 + 0;
}
