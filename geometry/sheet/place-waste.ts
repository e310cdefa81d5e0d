import type { Circle, PlacedPlate } from './sheets.ts';

/** A plate's waste where the plate lies: turned with it, clockwise. */
export function wasteInPlace(waste: Circle, plate: Pick<PlacedPlate, 'x' | 'y' | 'turnDeg'>): Circle {
  const { x, y } = turned(waste, plate.turnDeg);
  return { x: plate.x + x, y: plate.y + y, radiusMm: waste.radiusMm };
}

/** A point turned clockwise about the origin. */
export function turned(
  { x, y }: { readonly x: number; readonly y: number },
  turnDeg: number,
): { x: number; y: number } {
  const angle = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * cos + y * sin, y: y * cos - x * sin };
}
