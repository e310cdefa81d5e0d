import type { Design } from '../design/schema.ts';
import { headDiameter } from './blank.ts';
import { headRecess } from './recess.ts';

/** A fingertip gets hold of a plate's edge where so much is free beside it: common practice, no source. */
export const FINGER_ROOM_MM = 8;
/** So deep below the staves' ends fingers still lift well: common practice, no source. */
export const FINGER_REACH_MM = 60;

export interface FingerRoom {
  /** Free between the plate and the chime, on each side, where the head is narrowest. */
  readonly roomMm: number;
  readonly recessMm: number;
  readonly tight: boolean;
  readonly deep: boolean;
}

/** Whether fingers can lift a plate of so many mm out of the head again; undefined on the side of a barrel. */
export function fingerRoom(
  { head, surface }: Pick<Design, 'head' | 'surface'>,
  plateDiameterMm: number,
): FingerRoom | undefined {
  const { smallerMm } = headDiameter(head);
  if (surface !== 'head' || smallerMm <= 0) return undefined;
  const roomMm = (smallerMm - plateDiameterMm) / 2;
  const recessMm = headRecess(head).mm;
  return { roomMm, recessMm, tight: roomMm < FINGER_ROOM_MM, deep: recessMm > FINGER_REACH_MM };
}

/**
 * A plate that has room for fingers around it is cut without openings to lift it by, though the design has them; so is
 * one for the side of a barrel, which lies open.
 */
export function isLifted(design: Pick<Design, 'head' | 'surface'>, plateDiameterMm: number): boolean {
  const room = fingerRoom(design, plateDiameterMm);
  return room !== undefined && (room.tight || room.deep);
}
