import { GRID_MM } from '../units.ts';
import type { Circle, NestGaps, SheetKind } from './sheets.ts';

/**
 * Packing speaks of discs in a room: a disc is a plate grown by half the gap, and the room a sheet whose edges moved in
 * by the edge margin and out by that half, so that discs may touch each other and the walls. Nothing else is left of
 * gaps and margins.
 */
export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

export type Room = BoxRoom | RoundRoom;

export interface BoxRoom {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Round waste inside a plate. */
export interface RoundRoom {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export function isRound(room: Room): room is RoundRoom {
  return 'radius' in room;
}

/** The room of a whole sheet. */
export function roomOfSheet(sheet: { readonly widthMm: number; readonly heightMm: number }, gaps: NestGaps): BoxRoom {
  const inset = gaps.edgeMm - gaps.betweenMm / 2;
  return { minX: inset, minY: inset, maxX: sheet.widthMm - inset, maxY: sheet.heightMm - inset };
}

/** The room of round waste: a plate in it keeps its gap to the waste's edge. */
export function roomOfWaste(waste: Circle, gaps: NestGaps): RoundRoom {
  return { x: waste.x, y: waste.y, radius: waste.radiusMm - gaps.betweenMm / 2 };
}

/** A plate, or what a remnant has lost, as a disc. */
export function discOf(circle: Circle, gaps: NestGaps): Disc {
  return { x: circle.x, y: circle.y, r: circle.radiusMm + gaps.betweenMm / 2 };
}

/** What a sheet of this kind has lost, as discs. */
export function goneFrom(kind: SheetKind, gaps: NestGaps): readonly Disc[] {
  return (kind.gone ?? []).map((circle) => discOf(circle, gaps));
}

/** Does the disc lie in the room? A grid step of the cut counts as nothing. */
export function liesIn({ x, y, r }: Disc, room: Room): boolean {
  if (isRound(room)) return Math.hypot(x - room.x, y - room.y) + r <= room.radius + GRID_MM / 2;
  const spare = r - GRID_MM / 2;
  return x - spare >= room.minX && y - spare >= room.minY && x + spare <= room.maxX && y + spare <= room.maxY;
}

/** Are two discs apart? A grid step of the cut counts as nothing. */
export function apart(a: Disc, b: Disc): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) >= a.r + b.r - GRID_MM / 2;
}

/** Radius of the largest disc that an empty room takes. */
export function widestIn(room: Room): number {
  return isRound(room) ? room.radius : Math.min(room.maxX - room.minX, room.maxY - room.minY) / 2;
}

/** Area of a room, mm². */
export function areaOf(room: Room): number {
  if (isRound(room)) return Math.PI * room.radius ** 2;
  return Math.max(0, room.maxX - room.minX) * Math.max(0, room.maxY - room.minY);
}
