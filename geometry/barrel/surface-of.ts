/**
 * What the barrel adds to a plate. This file says what a plate lies on, or why it cannot; make-plate.ts asks it once.
 *
 * - Openings to lift by come where fingers find no room (finger-room.ts).
 * - A rolled plate is spread by layout/spread.ts, which moves shapes and turns none. surface.ts is one mapping for checks,
 *   tint and view.
 * - A plate with `masks` is laid out by layout/mask-ring.ts instead.
 * - Openings that no element draws carry an id that begins with a colon (layout/no-element.ts); the schema keeps elements
 *   from such ids.
 */

import type { Design, Side } from '../design/schema.ts';
import { headDiameter } from './blank.ts';
import { sideMeasures } from './side-measures.ts';
import type { SideSurface, Surface } from './surface.ts';

/**
 * The surface a plate of so many mm is laid on.
 * In: design, the plate's diameter and its sheet's thickness in mm. Out: the surface, or a sentence that says why
 * there can be none: a plate larger than the head, a bulge beyond a half sphere, a barrel that tapers the wrong way.
 */
export function surfaceOf(
  design: Pick<Design, 'head' | 'surface'>,
  plateDiameterMm: number,
  thicknessMm: number,
): Lying {
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

/** What a plate lies on, or why it cannot lie there. */
export type Lying = { readonly surface: Surface } | { readonly problem: SurfaceProblem };

export type SurfaceProblem =
  | { readonly kind: 'no-head' }
  | { readonly kind: 'larger-than-head'; readonly plateMm: number; readonly headMm: number }
  | { readonly kind: 'beyond-half-sphere'; readonly crownMm: number; readonly mostMm: number }
  | { readonly kind: 'no-bilge' }
  | { readonly kind: 'tapers-wrongly'; readonly endMm: number; readonly bilgeMm: number }
  | { readonly kind: 'longer-than-staves'; readonly plateMm: number; readonly lengthMm: number }
  | { readonly kind: 'round-the-barrel'; readonly plateMm: number; readonly mostMm: number };

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
