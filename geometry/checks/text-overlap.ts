import type { Opening } from '../bridges/types.ts';
import type { Finding, Place } from '../findings.ts';
import { ringsGap } from '../measure/distance.ts';
import { boxOf, nearestToCentre, reachOf } from '../measure/facts.ts';
import { boxesWithin } from '../measure/ring.ts';
import type { Box, Ring } from '../shapes.ts';
import { inMm, said } from '../sentences/say.ts';
import type { CheckInput } from './input.ts';
import { callElement } from './words.ts';

interface Reach {
  readonly opening: Opening;
  readonly box: Box;
  /** Nearest and farthest from the centre of the plate: two elements one inside the other differ here. */
  readonly inner: number;
  readonly outer: number;
}

/**
 * Different elements that run into each other, or leave less metal between them than the least web: one finding a
 * pair, at the worst place. Openings that ran together arrive as one opening that belongs to both.
 */
export function checkTextOverlap(input: CheckInput): Finding[] {
  const web = input.rules.leastWebMm;
  const worst = new Map<string, { ids: readonly [string, string]; mm: number; place: Place }>();
  const note = (a: string, b: string, mm: number, place: Place) => {
    const ids: readonly [string, string] = a < b ? [a, b] : [b, a];
    const key = JSON.stringify(ids);
    const known = worst.get(key);
    if (!known || mm < known.mm) worst.set(key, { ids, mm, place });
  };

  const reaches = input.openings.map(reachOfOpening);
  for (const { opening } of reaches) {
    const [first, ...others] = opening.elementIds;
    for (const other of others) {
      if (first !== undefined) note(first, other, 0, { kind: 'ring', ring: opening.region.outer });
    }
  }
  for (let i = 0; i < reaches.length; i++) {
    const a = reaches[i];
    if (!a) continue;
    for (let j = i + 1; j < reaches.length; j++) {
      const b = reaches[j];
      if (!b || !boxesWithin(a.box, b.box, web) || sharesElement(a.opening, b.opening)) continue;
      if (a.inner - b.outer >= web || b.inner - a.outer >= web) continue;
      const gap = ringsGap(ringsOf(a), ringsOf(b), web);
      const [idA, idB] = [a.opening.elementIds[0], b.opening.elementIds[0]];
      if (gap && idA !== undefined && idB !== undefined) {
        note(idA, idB, gap.mm, { kind: 'point', at: gap.from, radiusMm: Math.max(5, 3 * web) });
      }
    }
  }

  return [...worst.values()].map(({ ids, mm, place }) => {
    const pair = { one: callElement(input.design.elements, ids[0]), other: callElement(input.design.elements, ids[1]) };
    return {
      code: 'text-overlap',
      severity: 'stop',
      place,
      elementIds: ids,
      measuredMm: mm,
      limitMm: web,
      ...(mm === 0
        ? said('findings.overlap', pair)
        : said('findings.overlapNear', { ...pair, gap: inMm(mm), least: inMm(web) })),
    };
  });
}

function reachOfOpening(opening: Opening): Reach {
  const { region } = opening;
  const { outer } = region;
  return { opening, box: boxOf(outer), inner: nearestToCentre(region), outer: reachOf(outer).mm };
}

function ringsOf({ opening }: Reach): Ring[] {
  return [opening.region.outer, ...opening.region.holes];
}

function sharesElement(a: Opening, b: Opening): boolean {
  return a.elementIds.some((id) => b.elementIds.includes(id));
}
