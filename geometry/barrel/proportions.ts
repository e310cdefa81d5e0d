import type { Barrel, Published } from './barrels.ts';

/**
 * What a barrel measures where nobody says: shares of what is known.
 * Stave thickness as a share of the head: the mean of the rows of the barrel table that publish both (0.041 to 0.049).
 */
export const STAVE_PER_HEAD = 0.045;
/** An end is about so much smaller than the bilge: common practice, no source. */
export const END_SHARE = 0.85;
/** A barrel is about so many times as long as its bilge is wide: common practice, no source. */
export const LENGTH_SHARE = 1.3;

/** Thickness of a barrel's staves, mm: as published, else in proportion to its head. */
export function staveMm(barrel: Barrel | undefined, headMm: number): number {
  return barrel?.staveMm ? middle(barrel.staveMm) : STAVE_PER_HEAD * headMm;
}

export function middle({ least, most }: Published): number {
  return (least + most) / 2;
}
