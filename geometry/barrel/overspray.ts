import type { Design } from '../design/schema.ts';
import { headDiameter } from './blank.ts';

export interface Overspray {
  /** Breadth in mm of the ring of wood around the plate, where it is broadest. */
  readonly ringMm: number;
  /** Share of the head's area that the plate leaves open, 0 to 1. */
  readonly share: number;
}

/** What a plate leaves of its head for stray paint: an oval head's area is pi a b / 4. Undefined on the side. */
export function oversprayOf(
  { head, surface }: Pick<Design, 'head' | 'surface'>,
  plateMm: number,
): Overspray | undefined {
  const { smallerMm, largerMm } = headDiameter(head);
  if (surface !== 'head' || smallerMm <= 0) return undefined;
  return {
    ringMm: Math.max(0, (largerMm - plateMm) / 2),
    share: Math.max(0, 1 - (plateMm * plateMm) / (smallerMm * largerMm)),
  };
}
