import { GRID_MM } from '../units.ts';
import type { Circle, NestGaps, SheetKind } from './sheets.ts';

/**
 * Packing speaks of discs in a container: a disc is a plate grown by half the gap, and the container a sheet whose edges moved in
 * by the edge margin and out by that half, so that discs may touch each other and the walls. Nothing else is left of
 * gaps and margins.
 */
export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

export type Container = BoxContainer | RoundContainer;

export interface BoxContainer {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Round waste inside a plate. */
export interface RoundContainer {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export function isRound(container: Container): container is RoundContainer {
  return 'radius' in container;
}

export function containerOfSheet(
  sheet: { readonly widthMm: number; readonly heightMm: number },
  gaps: NestGaps,
): BoxContainer {
  const inset = gaps.edgeMm - gaps.betweenMm / 2;
  return { minX: inset, minY: inset, maxX: sheet.widthMm - inset, maxY: sheet.heightMm - inset };
}

/** The container of round waste: a plate in it keeps its gap to the waste's edge. */
export function containerOfWaste(waste: Circle, gaps: NestGaps): RoundContainer {
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

/** Does the disc lie in the container? A grid step of the cut counts as nothing. */
export function liesIn({ x, y, r }: Disc, container: Container): boolean {
  if (isRound(container)) return Math.hypot(x - container.x, y - container.y) + r <= container.radius + GRID_MM / 2;
  const spare = r - GRID_MM / 2;
  return (
    x - spare >= container.minX &&
    y - spare >= container.minY &&
    x + spare <= container.maxX &&
    y + spare <= container.maxY
  );
}

/** Are two discs apart? A grid step of the cut counts as nothing. */
export function apart(a: Disc, b: Disc): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) >= a.r + b.r - GRID_MM / 2;
}

/** Radius of the largest disc that an empty container takes. */
export function widestIn(container: Container): number {
  return isRound(container)
    ? container.radius
    : Math.min(container.maxX - container.minX, container.maxY - container.minY) / 2;
}

/** Area of a container, mm². */
export function areaOf(container: Container): number {
  if (isRound(container)) return Math.PI * container.radius ** 2;
  return Math.max(0, container.maxX - container.minX) * Math.max(0, container.maxY - container.minY);
}
