import type { DesignElement } from '../design/schema.ts';
import type { Finding, Mend } from '../findings.ts';
import { MASK_ID } from '../layout/no-element.ts';
import type { Extent } from '../layout/placed.ts';
import { reachOf } from '../measure/facts.ts';
import type { Point, Ring } from '../shapes.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import type { CheckInput } from './input.ts';
import { callElement } from './words.ts';
import { MEND_SPARE_SHARE } from '../units.ts';

/** A band that would begin nearer to the middle than this share of the radius is not moved there. */
const LEAST_INNER = 0.05;

/**
 * Openings nearer to the rim than the stock allows, one finding an element. Past the rim or with less metal than the
 * least web the plate must not be cut; below the rim margin it is worth a look: the ring of metal bends when handled.
 */
export function checkTooNearRim(input: CheckInput): Finding[] {
  const radius = input.diameterMm / 2;
  const farthest = new Map<string, { at: Point; reach: number; rings: Ring[] }>();
  for (const opening of input.openings) {
    const elementId = findOutermost(opening.elementIds, input.layout.extents);
    // How broad a ring that masks is, its layout says.
    if (elementId !== undefined && elementId !== MASK_ID) {
      const entry = farthest.get(elementId) ?? { at: { x: 0, y: 0 }, reach: 0, rings: [] };
      const reach = reachOf(opening.region.outer);
      if (reach.mm > entry.reach) [entry.at, entry.reach] = [reach.at, reach.mm];
      entry.rings.push(opening.region.outer);
      farthest.set(elementId, entry);
    }
  }
  const findings: Finding[] = [];
  for (const [elementId, { at, reach, rings }] of farthest) {
    const metal = radius - reach;
    if (metal >= input.rules.rimMarginMm) continue;
    const what = callElement(input.design.elements, elementId);
    const stop = metal < input.rules.leastWebMm;
    const limitMm = stop ? input.rules.leastWebMm : input.rules.rimMarginMm;
    const change = offerMend(
      input.design.elements.find((e) => e.id === elementId),
      radius,
      radius - input.rules.rimMarginMm,
      reach,
      rings.flat(),
    );
    findings.push({
      code: 'too-near-rim',
      severity: stop ? 'stop' : 'look',
      place: { kind: 'point', at, radiusMm: Math.max(3, input.rules.rimMarginMm) },
      elementIds: [elementId],
      measuredMm: metal,
      limitMm,
      ...(metal <= 0
        ? said('findings.rimOver', { what, over: inMm(-metal) })
        : said('findings.rimNear', { what, metal: inMm(metal), least: inMm(input.rules.rimMarginMm) })),
      ...(change ? { mend: change } : {}),
    });
  }
  return findings;
}

/** Openings that ran together belong to several elements; the one that reaches farthest out is the one to move. */
function findOutermost(ids: readonly string[], extents: readonly Extent[]): string | undefined {
  let best = ids[0];
  let farthest = -Infinity;
  if (ids.length < 2) return best;
  for (const e of extents) {
    if (!ids.includes(e.elementId)) continue;
    const reach = e.kind === 'sector' ? e.outerMm : Math.hypot(e.x, e.y) + Math.hypot(e.widthMm, e.heightMm) / 2;
    if (reach > farthest) [best, farthest] = [e.elementId, reach];
  }
  return best;
}

function offerMend(
  element: DesignElement | undefined,
  radius: number,
  allowed: number,
  reach: number,
  points: readonly Point[],
): Finding['mend'] {
  if (!element) return undefined;
  if (element.kind === 'lineText') {
    const share = shareThatFits(element.x * radius, element.y * radius, points, allowed - MEND_SPARE_SHARE * radius);
    if (share < 0.3) return undefined;
    const change: Mend = { kind: 'scale-text', elementId: element.id, share };
    return { ...labelled('mends.smaller', { percent: Math.ceil((1 - share) * 100) }), change };
  }
  if (element.kind === 'motif' || element.kind === 'artwork') return undefined;
  const inwards = (reach - allowed) / radius + MEND_SPARE_SHARE;
  const inner = element.inner - inwards;
  if (inner < LEAST_INNER) return undefined;
  const change: Mend = { kind: 'move-band', elementId: element.id, inner, outer: element.outer - inwards };
  return { ...labelled('mends.moveInBy', { by: inMm(inwards * radius) }), change };
}

/** Greatest share by which points may keep their distance from a middle and stay within the allowed radius. */
function shareThatFits(x: number, y: number, points: readonly Point[], allowed: number): number {
  let share = 1;
  const middleSq = x * x + y * y;
  if (middleSq >= allowed * allowed) return 0;
  for (const p of points) {
    const [dx, dy] = [p.x - x, p.y - y];
    const a = dx * dx + dy * dy;
    const b = x * dx + y * dy;
    if (a === 0) continue;
    share = Math.min(share, (-b + Math.sqrt(b * b + a * (allowed * allowed - middleSq))) / a);
  }
  return Math.floor(share * 1000) / 1000;
}
