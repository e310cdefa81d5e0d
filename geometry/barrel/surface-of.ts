import type { Design, Side } from '../design/schema.ts';
import { barrelById, type Barrel } from './barrels.ts';
import { headDiameter } from './blank.ts';
import type { SideSurface, Surface } from './surface.ts';

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
/** A barrel is about so many times as long as its bilge is wide: common practice, no source. */
const LENGTH_SHARE = 1.3;

/**
 * The surface a plate of so many mm is laid on.
 * In: design, the plate's diameter and its sheet's thickness in mm. Out: the surface, or a sentence that says why
 * there can be none: a plate larger than the head, a bulge beyond a half sphere, a barrel that tapers the wrong way.
 */
export function surfaceOf(
  design: Pick<Design, 'head' | 'surface'>,
  plateDiameterMm: number,
  thicknessMm: number,
): { readonly surface: Surface } | { readonly problem: SurfaceProblem } {
  if (design.surface !== 'head') return sideSurface(design.head, design.surface, plateDiameterMm, thicknessMm);
  const { smallerMm } = headDiameter(design.head);
  const { crownMm } = design.head;
  if (!(smallerMm > 0)) return { problem: { kind: 'no-head' } };
  if (plateDiameterMm > smallerMm)
    return { problem: { kind: 'larger-than-head', plateMm: plateDiameterMm, headMm: smallerMm } };
  if (Math.abs(crownMm) > smallerMm / 2)
    return { problem: { kind: 'beyond-half-sphere', crownMm: Math.abs(crownMm), mostMm: smallerMm / 2 } };
  return { surface: { kind: 'head', headDiameterMm: smallerMm, crownMm, plateDiameterMm } };
}

export type SurfaceProblem =
  | { readonly kind: 'no-head' }
  | { readonly kind: 'larger-than-head'; readonly plateMm: number; readonly headMm: number }
  | { readonly kind: 'beyond-half-sphere'; readonly crownMm: number; readonly mostMm: number }
  | { readonly kind: 'no-bilge' }
  | { readonly kind: 'tapers-wrongly'; readonly endMm: number; readonly bilgeMm: number }
  | { readonly kind: 'longer-than-staves'; readonly plateMm: number; readonly lengthMm: number }
  | { readonly kind: 'round-the-barrel'; readonly plateMm: number; readonly mostMm: number };

/** What the side measures, by the person's own measures and the barrel table. */
export function sideMeasures(head: Design['head'], side: Side): SideMeasures | undefined {
  const barrel = head.source.kind === 'barrel' ? barrelById(head.source.barrel) : undefined;
  const bilgeMm = side.bilgeMm ?? middle(barrel, 'bilgeMm');
  if (bilgeMm === undefined) return undefined;
  const endMm = side.endMm ?? endOf(barrel) ?? END_SHARE * bilgeMm;
  const lengthMm = side.lengthMm ?? middle(barrel, 'heightMm') ?? LENGTH_SHARE * bilgeMm;
  const guessed = side.bilgeMm === undefined || side.endMm === undefined || side.lengthMm === undefined;
  return { bilgeMm, endMm, lengthMm, guessed };
}

function sideSurface(
  head: Design['head'],
  side: Side,
  plateMm: number,
  thicknessMm: number,
): { readonly surface: SideSurface } | { readonly problem: SurfaceProblem } {
  const measures = sideMeasures(head, side);
  if (!measures || !(measures.bilgeMm > 0) || !(measures.endMm > 0) || !(measures.lengthMm > 0))
    return { problem: { kind: 'no-bilge' } };
  const { bilgeMm, endMm, lengthMm } = measures;
  if (endMm > bilgeMm) return { problem: { kind: 'tapers-wrongly', endMm, bilgeMm } };
  if (plateMm > lengthMm) return { problem: { kind: 'longer-than-staves', plateMm, lengthMm } };
  const mostMm = (Math.PI * (bilgeMm + thicknessMm)) / 2;
  // Half the barrel is as far as a plate can be laid on from one side.
  if (plateMm > mostMm) return { problem: { kind: 'round-the-barrel', plateMm, mostMm } };
  return {
    surface: {
      kind: 'side',
      bilgeRadiusMm: bilgeMm / 2,
      endRadiusMm: endMm / 2,
      lengthMm,
      thicknessMm,
      lines: side.lines,
    },
  };
}

function middle(barrel: Barrel | undefined, part: 'bilgeMm' | 'heightMm'): number | undefined {
  const published = barrel?.[part];
  return published && (published.least + published.most) / 2;
}

/** Outside diameter at the ends: the visible head and the chime's two staves. */
function endOf(barrel: Barrel | undefined): number | undefined {
  if (!barrel) return undefined;
  const headMm = (barrel.headMm.least + barrel.headMm.most) / 2;
  return headMm + 2 * (barrel.staveMm ? (barrel.staveMm.least + barrel.staveMm.most) / 2 : 0.045 * headMm);
}
