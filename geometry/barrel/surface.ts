import type { Point } from '../shapes.ts';
import { crownRadiusMm, sagittaMm } from './crown.ts';

/** Millimetres; x and y as on the plate seen from the painted side, z towards the one who looks. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A head, flat or a spherical cap, and a flat plate of so many mm laid centred on it. */
export interface HeadSurface {
  readonly kind: 'head';
  readonly headDiameterMm: number;
  /** Height of the head's middle above its edge; below 0 when it is hollow. */
  readonly crownMm: number;
  readonly plateDiameterMm: number;
}

/**
 * The side of a barrel about its bilge, and a plate rolled to the bilge's radius. Staves are arcs of a circle along
 * the barrel (the pole of the old coopers' templates; a fair curve of another kind differs by less than wood does).
 */
export interface SideSurface {
  readonly kind: 'side';
  /** Outside, at the bilge and at the ends. */
  readonly bilgeRadiusMm: number;
  readonly endRadiusMm: number;
  readonly lengthMm: number;
  readonly thicknessMm: number;
  readonly lines: 'along-hoops' | 'up-staves';
}

export type Surface = HeadSurface | SideSurface;

/**
 * Where a point of the flat plate lies when the plate is on the barrel.
 * Head: where it is, at height 0. Side: rolled, so that lengths round the barrel are kept in the middle of the sheet
 * (its neutral fibre), and lengths along the staves everywhere.
 */
export function onPlate(surface: Surface, p: Point): Point3 {
  if (surface.kind === 'head') return { x: p.x, y: p.y, z: 0 };
  const { round, along } = roundAndAlong(surface, p);
  const radius = neutralRadiusMm(surface);
  return facing(surface, round / radius, radius, along);
}

/**
 * Where colour that goes straight through the plate at that point meets the wood: straight down on a head, towards the
 * barrel's axis on a side.
 */
export function onWood(surface: Surface, p: Point): Point3 {
  if (surface.kind === 'head') return { x: p.x, y: p.y, z: -gapMm(surface, p) };
  const { round, along } = roundAndAlong(surface, p);
  return facing(surface, round / neutralRadiusMm(surface), surface.bilgeRadiusMm - gapMm(surface, p), along);
}

/**
 * Gap in mm between plate and wood. A crowned head touches the plate in the middle: the gap is the cap's sagitta
 * there. A hollow one carries the plate at its rim. A rolled plate touches along the bilge and leaves the staves as
 * they fall away: the sagitta of their arc.
 */
export function gapMm(surface: Surface, p: Point): number {
  if (surface.kind === 'side') return sagittaMm(staveRadiusMm(surface), 2 * Math.abs(roundAndAlong(surface, p).along));
  const radius = crownRadiusMm(surface.headDiameterMm, surface.crownMm);
  const here = sagittaMm(radius, 2 * Math.hypot(p.x, p.y));
  return surface.crownMm >= 0 ? here : Math.max(0, sagittaMm(radius, surface.plateDiameterMm) - here);
}

/** Radius in mm of the arc of the staves, from length over the staves and the fall from bilge to end. */
function staveRadiusMm({ bilgeRadiusMm, endRadiusMm, lengthMm }: SideSurface): number {
  return crownRadiusMm(lengthMm, bilgeRadiusMm - endRadiusMm);
}

/** Radius in mm of the middle of a sheet rolled onto the bilge: neither stretched nor pressed. */
export function neutralRadiusMm({ bilgeRadiusMm, thicknessMm }: SideSurface): number {
  return bilgeRadiusMm + thicknessMm / 2;
}

/** On the side: how far round the barrel and how far along its staves a point lies, mm. */
function roundAndAlong(surface: SideSurface, p: Point): { round: number; along: number } {
  return surface.lines === 'along-hoops' ? { round: p.x, along: p.y } : { round: p.y, along: p.x };
}

/** The point at an angle round the axis, as seen by one who stands before the plate; z is 0 on the bilge's surface. */
function facing(surface: SideSurface, angle: number, radius: number, along: number): Point3 {
  const sideways = radius * Math.sin(angle);
  const z = radius * Math.cos(angle) - surface.bilgeRadiusMm;
  return surface.lines === 'along-hoops' ? { x: sideways, y: along, z } : { x: along, y: sideways, z };
}
