import type { Design, Side } from '../design/schema.ts';
import { barrelById, type Barrel } from './barrels.ts';
import { END_SHARE, LENGTH_SHARE, middle, staveMm } from './proportions.ts';

/** What the barrel's side measures; a person's own measures go before the table's middles. */
export interface SideMeasures {
  readonly bilgeMm: number;
  readonly endMm: number;
  readonly lengthMm: number;
  /** True when any of them comes from the table. */
  readonly guessed: boolean;
}

/** About so much of a barrel's length at the bilge is free of hoops: common practice, no source. */
const FREE_OF_HOOPS = 0.36;

/** What the side measures, by the person's own measures and the barrel table; undefined where the bilge is unknown. */
export function sideMeasures(head: Design['head'], side: Side): SideMeasures | undefined {
  const barrel = head.source.kind === 'barrel' ? barrelById(head.source.barrel) : undefined;
  const bilgeMm = side.bilgeMm ?? (barrel?.bilgeMm && middle(barrel.bilgeMm));
  if (bilgeMm === undefined) return undefined;
  const endMm = side.endMm ?? endOf(barrel) ?? END_SHARE * bilgeMm;
  const lengthMm = side.lengthMm ?? (barrel?.heightMm && middle(barrel.heightMm)) ?? LENGTH_SHARE * bilgeMm;
  const guessed = side.bilgeMm === undefined || side.endMm === undefined || side.lengthMm === undefined;
  return { bilgeMm, endMm, lengthMm, guessed };
}

/** How long the wood at the bilge is free between the hoops next to it, mm: an estimate, to be measured. */
export function freeOfHoopsMm(lengthMm: number): number {
  return FREE_OF_HOOPS * lengthMm;
}

/** Outside diameter at the ends: the visible head and the chime's two staves. */
function endOf(barrel: Barrel | undefined): number | undefined {
  if (!barrel) return undefined;
  const headMm = middle(barrel.headMm);
  return headMm + 2 * staveMm(barrel, headMm);
}
