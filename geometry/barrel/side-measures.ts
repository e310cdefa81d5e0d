import type { Design, Side } from '../design/schema.ts';
import { barrelById, type Barrel } from './barrels.ts';

/** What the barrel's side measures; a person's own measures go before the table's middles. */
export interface SideMeasures {
  readonly bilgeMm: number;
  readonly endMm: number;
  readonly lengthMm: number;
  /** True when any of them comes from the table. */
  readonly guessed: boolean;
}

/** An end is about so much smaller than the bilge where the table has none: common practice, no source. */
const END_SHARE = 0.85;
/** Staves are about so thick, as a share of the head, where the table has none: common practice, no source. */
const STAVE_PER_HEAD = 0.045;
/** A barrel is about so many times as long as its bilge is wide: common practice, no source. */
const LENGTH_SHARE = 1.3;
/** About so much of a barrel's length at the bilge is free of hoops: common practice, no source. */
const FREE_OF_HOOPS = 0.36;

/** What the side measures, by the person's own measures and the barrel table; undefined where the bilge is unknown. */
export function sideMeasures(head: Design['head'], side: Side): SideMeasures | undefined {
  const barrel = head.source.kind === 'barrel' ? barrelById(head.source.barrel) : undefined;
  const bilgeMm = side.bilgeMm ?? middle(barrel, 'bilgeMm');
  if (bilgeMm === undefined) return undefined;
  const endMm = side.endMm ?? endOf(barrel) ?? END_SHARE * bilgeMm;
  const lengthMm = side.lengthMm ?? middle(barrel, 'heightMm') ?? LENGTH_SHARE * bilgeMm;
  const guessed = side.bilgeMm === undefined || side.endMm === undefined || side.lengthMm === undefined;
  return { bilgeMm, endMm, lengthMm, guessed };
}

/** How long the wood at the bilge is free between the hoops next to it, mm: an estimate, to be measured. */
export function freeOfHoopsMm(lengthMm: number): number {
  return FREE_OF_HOOPS * lengthMm;
}

function middle(barrel: Barrel | undefined, part: 'bilgeMm' | 'heightMm'): number | undefined {
  const published = barrel?.[part];
  return published && (published.least + published.most) / 2;
}

/** Outside diameter at the ends: the visible head and the chime's two staves. */
function endOf(barrel: Barrel | undefined): number | undefined {
  if (!barrel) return undefined;
  const headMm = (barrel.headMm.least + barrel.headMm.most) / 2;
  return headMm + 2 * (barrel.staveMm ? (barrel.staveMm.least + barrel.staveMm.most) / 2 : STAVE_PER_HEAD * headMm);
}
