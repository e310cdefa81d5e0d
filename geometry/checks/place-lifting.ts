import type { Mend } from '../findings.ts';
import { FINGER_HOLE_MM } from '../layout/lifting.ts';
import { isElementId } from '../layout/no-element.ts';
import { clockPoint } from '../measure/clock.ts';
import { nearestOnSegment } from '../measure/distance.ts';
import { boxOf } from '../measure/facts.ts';
import { regionHolds } from '../measure/ring.ts';
import type { Point } from '../shapes.ts';
import type { CheckInput } from './input.ts';

type Lifting = Extract<Mend, { kind: 'set-lifting' }>['lifting'];

/** Left and right first, since a plate is lifted with both hands; then turned away from there more and more. */
const TURNS_DEG = [90, 80, 100, 70, 110, 60, 120, 50, 130, 40, 140, 30, 150, 20, 160, 10, 170, 0];
const STEP_MM = 6;
/** Holes nearer to the middle than this share of the radius would tip the plate: common practice, no source. */
const LEAST_AT = 0.5;

/**
 * Two finger holes opposite each other, clear of all openings and of the rim by the stock's rules; undefined where
 * there is no room.
 */
export function placeLifting(plate: Pick<CheckInput, 'openings' | 'rules' | 'diameterMm'>): Lifting | undefined {
  const { rules, diameterMm } = plate;
  const openings = plate.openings.filter((o) => o.elementIds.some(isElementId));
  const radiusMm = diameterMm / 2;
  const webMm = Math.max(rules.leastWebMm, rules.leastBridgeMm);
  const needMm = FINGER_HOLE_MM / 2 + 1.05 * webMm;
  const farthest = radiusMm - rules.rimMarginMm - FINGER_HOLE_MM / 2 - 0.5;
  for (let away = farthest; away >= LEAST_AT * radiusMm; away -= STEP_MM) {
    for (const firstDeg of TURNS_DEG) {
      const places = [clockPoint(away, firstDeg), clockPoint(away, firstDeg + 180)];
      if (places.every((p) => isFree(p, needMm, openings)))
        return { shape: 'holes', count: 2, firstDeg, at: away / radiusMm };
    }
  }
  return undefined;
}

function isFree(p: Point, needMm: number, openings: CheckInput['openings']): boolean {
  return openings.every(({ region }) => {
    const box = boxOf(region.outer);
    const far = Math.max(box.minX - p.x, p.x - box.maxX, box.minY - p.y, p.y - box.maxY);
    if (far >= needMm) return true;
    if (regionHolds(region, p)) return false;
    return [region.outer, ...region.holes].every((ring) =>
      ring.every((b, i) => {
        const q = nearestOnSegment(p, ring.at(i - 1)!, b);
        return Math.hypot(q.x - p.x, q.y - p.y) >= needMm;
      }),
    );
  });
}
