import type { Design, Side } from '../design/schema.ts';
import { barrelById, type Barrel } from './barrels.ts';
import { headDiameter } from './blank.ts';
import { middle, staveMm } from './proportions.ts';
import { headRecess } from './recess.ts';
import { caskVolume } from './volume.ts';

/** Heads are about as thick as staves: common practice, no source. */
const HEAD_PER_STAVE = 0.9;

/** A barrel from outside, mm; the head as it is seen inside the chime. */
export interface Outside {
  readonly bilgeMm: number;
  readonly lengthMm: number;
  readonly headMm: number;
  readonly staveMm: number;
  readonly recessMm: number;
}

/**
 * Litres that a barrel holds, by Oughtred's formula from its inside measures: the bilge less two staves; the length less
 * both recesses and both heads; the visible head as it is.
 */
export function insideLitres({ bilgeMm, lengthMm, headMm, staveMm, recessMm }: Outside): number {
  const insideMm = lengthMm - 2 * (recessMm + HEAD_PER_STAVE * staveMm);
  return caskVolume('spheroid', insideMm, bilgeMm - 2 * staveMm, headMm) / 1e6;
}

/** Published measures of a barrel at their middles; undefined where no bilge or no length is published. */
export function outsideOf(barrel: Barrel): Outside | undefined {
  const { bilgeMm, heightMm } = barrel;
  if (!bilgeMm || !heightMm) return undefined;
  const headMm = middle(barrel.headMm);
  return {
    bilgeMm: middle(bilgeMm),
    lengthMm: middle(heightMm),
    headMm,
    staveMm: staveMm(barrel, headMm),
    recessMm: middle(barrel.recessMm),
  };
}

/**
 * Litres that somebody's own barrel holds by its bilge and length as measured: a slip of the tape shows beside what is
 * burned on the head. Undefined while one of the two is not measured, or makes no sense.
 */
export function measuredLitres(head: Design['head'], side: Side): number | undefined {
  const { bilgeMm, lengthMm } = side;
  const { smallerMm, largerMm } = headDiameter(head);
  if (bilgeMm === undefined || lengthMm === undefined || !(smallerMm > 0)) return undefined;
  const headMm = (smallerMm + largerMm) / 2;
  const barrel = head.source.kind === 'barrel' ? barrelById(head.source.barrel) : undefined;
  const outside = { bilgeMm, lengthMm, headMm, staveMm: staveMm(barrel, headMm), recessMm: headRecess(head).mm };
  const litres = insideLitres(outside);
  return headMm < bilgeMm && lengthMm > 2 * (outside.recessMm + outside.staveMm) ? litres : undefined;
}
