import { turnPoint } from '../measure/clock.ts';
import type { Circle, PlacedPlate } from './sheets.ts';

/** A plate's waste where the plate lies: turned with it, clockwise. */
export function wasteInPlace(waste: Circle, plate: Pick<PlacedPlate, 'x' | 'y' | 'turnDeg'>): Circle {
  const { x, y } = turnPoint(waste, plate.turnDeg);
  return { x: plate.x + x, y: plate.y + y, radiusMm: waste.radiusMm };
}
