import type { Barrel, Published } from './barrels.ts';
import { caskVolume } from './volume.ts';

/** Heads are about as thick as staves: common practice, no source. */
const HEAD_PER_STAVE = 0.9;
/** Stave thickness where none is published, as a share of the bilge: common practice, no source. */
const STAVE_SHARE = 0.032;

/** Inside measures of a barrel from its published outside ones, taken at their middles; mm. */
export interface Inside {
  readonly lengthMm: number;
  readonly bungMm: number;
  readonly headMm: number;
}

/**
 * Inside measures: the bilge less two staves; the length less both recesses and both heads; the visible head as it is.
 * Undefined where no bilge or no length is published.
 */
export function insideOf(barrel: Barrel): Inside | undefined {
  const { bilgeMm, heightMm } = barrel;
  if (!bilgeMm || !heightMm) return undefined;
  const stave = barrel.staveMm ? middle(barrel.staveMm) : STAVE_SHARE * middle(bilgeMm);
  return {
    lengthMm: middle(heightMm) - 2 * (middle(barrel.recessMm) + HEAD_PER_STAVE * stave),
    bungMm: middle(bilgeMm) - 2 * stave,
    headMm: middle(barrel.headMm),
  };
}

/** Litres that a barrel holds by Oughtred's formula from its inside measures, or undefined where they are unknown. */
export function insideLitres(barrel: Barrel): number | undefined {
  const inside = insideOf(barrel);
  return inside && caskVolume('spheroid', inside.lengthMm, inside.bungMm, inside.headMm) / 1e6;
}

function middle({ least, most }: Published): number {
  return (least + most) / 2;
}
