import type { Finding, Place, Severity } from '../../../geometry/findings.ts';
import { clockPoint } from '../../../geometry/measure/clock.ts';
import { joinBoxes, ringBox } from '../../../geometry/measure/ring.ts';
import type { Point } from '../../../geometry/shapes.ts';
import type { IsBare } from './bare-metal.ts';
import { toPlate, toScreen, type ScreenPoint, type View } from './canvas/view.ts';

/** A finding's number on the stage. Pure. */
export interface Pin {
  /** Index in the list of findings; the number shown is one more. */
  readonly index: number;
  readonly severity: Severity;
  /** What it points at. */
  readonly foot: ScreenPoint;
  /** Where the number stands, clear of every other. */
  readonly at: ScreenPoint;
  /** False for what is only a dot at its foot until it is pointed at. */
  readonly numbered: boolean;
}

export const PIN_RADIUS_PX = 11;
const CLEAR_PX = PIN_RADIUS_PX * 2 + 4;

/** More numbers than these would hide the lettering that they speak of. */
const MOST_NUMBERED = 12;

/** Farther from its foot than so many rings of spots a pin rather stands on a letter. */
const FARTHEST_BARE_RING = 5;

/**
 * Pins for all findings, none over another and, where it can be helped, none over an opening: each takes the free
 * spot nearest to its foot, in the order of the list, so that the worst stands best. Past a dozen they are dots.
 */
export function placePins(findings: readonly Finding[], radiusMm: number, view: View, isBare: IsBare): Pin[] {
  const pins: Pin[] = [];
  findings.forEach((finding, index) => {
    const foot = toScreen(view, footOf(finding.place, radiusMm));
    const onMetal = (spot: ScreenPoint) => isBare(toPlate(view, spot), (PIN_RADIUS_PX * 0.8) / view.scale);
    const numbered = index < MOST_NUMBERED;
    const at = numbered ? bestSpot(foot, pins, onMetal) : foot;
    pins.push({ index, severity: finding.severity, foot, at, numbered });
  });
  return pins;
}

/** The pin under a screen point, the topmost first. A finger is given more room than the pin itself takes. */
export function pinAt(pins: readonly Pin[], s: ScreenPoint, reachPx: number): Pin | undefined {
  let best: Pin | undefined;
  let least = reachPx;
  for (const pin of pins) {
    const away = Math.hypot(pin.at.leftPx - s.leftPx, pin.at.topPx - s.topPx);
    if (away > least) continue;
    least = away;
    best = pin;
  }
  return best;
}

/** What of a place the pin points at, in plate millimetres. */
export function footOf(place: Place, radiusMm: number): Point {
  switch (place.kind) {
    case 'point':
      return place.at;
    case 'ring': {
      const box = joinBoxes([ringBox(place.ring)]);
      if (box.minX > box.maxX) return clockPoint(radiusMm, 45);
      return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
    }
    case 'band':
      return clockPoint((place.innerMm + place.outerMm) / 2, 52);
    case 'plate':
      return clockPoint(radiusMm, 38);
  }
}

function bestSpot(foot: ScreenPoint, taken: readonly Pin[], onMetal: (spot: ScreenPoint) => boolean): ScreenPoint {
  let free: ScreenPoint | undefined;
  for (let ring = 0; ; ring++) {
    for (const spot of spotsAround(foot, ring)) {
      if (!isFree(spot, taken)) continue;
      if (ring > FARTHEST_BARE_RING || onMetal(spot)) return spot;
      free ??= spot;
    }
    if (ring >= FARTHEST_BARE_RING && free) return free;
  }
}

/** The foot itself, then ever wider rings of spots around it, upper right first. */
function spotsAround(foot: ScreenPoint, ring: number): ScreenPoint[] {
  if (ring === 0) return [foot];
  const spots = ring * 8;
  return Array.from({ length: spots }, (_, n) => {
    const turn = -Math.PI / 4 + (n / spots) * Math.PI * 2;
    const reach = ring * CLEAR_PX * 0.6;
    return { leftPx: foot.leftPx + reach * Math.cos(turn), topPx: foot.topPx + reach * Math.sin(turn) };
  });
}

function isFree(spot: ScreenPoint, taken: readonly Pin[]): boolean {
  return taken.every((p) => Math.hypot(p.at.leftPx - spot.leftPx, p.at.topPx - spot.topPx) >= CLEAR_PX);
}
