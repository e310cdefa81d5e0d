import type { Opening } from '../bridges/types.ts';
import type { Finding, Place } from '../findings.ts';
import { ringsGap } from '../measure/distance.ts';
import { boxesWithin, ringBox } from '../measure/ring.ts';
import type { Box, Ring } from '../shapes.ts';
import type { CheckInput } from './input.ts';
import { callElement, inMm, sentenceStart } from './words.ts';

interface Reach {
  readonly opening: Opening;
  readonly rings: readonly Ring[];
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

  const reaches = input.openings.map(reachOf);
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
      if (!b || sharesElement(a.opening, b.opening)) continue;
      if (a.inner - b.outer >= web || b.inner - a.outer >= web || !boxesWithin(a.box, b.box, web)) continue;
      const gap = ringsGap(a.rings, b.rings, web);
      const [idA, idB] = [a.opening.elementIds[0], b.opening.elementIds[0]];
      if (gap && idA !== undefined && idB !== undefined) {
        note(idA, idB, gap.mm, { kind: 'point', at: gap.from, radiusMm: Math.max(5, 3 * web) });
      }
    }
  }

  return [...worst.values()].map(({ ids, mm, place }) => {
    const a = sentenceStart(callElement(input.design.elements, ids[0]));
    const b = callElement(input.design.elements, ids[1]);
    return {
      code: 'text-overlap',
      severity: 'stop',
      place,
      elementIds: ids,
      measuredMm: mm,
      limitMm: web,
      sentence:
        mm === 0
          ? `${a} and ${b} run into each other. Move them apart or make one smaller.`
          : `${a} and ${b} leave only ${inMm(mm)} of metal between them; it takes ${inMm(web)}. Move them apart or make one smaller.`,
    };
  });
}

function reachOf(opening: Opening): Reach {
  const rings = [opening.region.outer, ...opening.region.holes];
  let outer = 0;
  for (const p of opening.region.outer) outer = Math.max(outer, Math.hypot(p.x, p.y));
  return { opening, rings, box: ringBox(opening.region.outer), inner: nearestToCentre(rings), outer };
}

/** Distance from the centre to the nearest edge: along sides, not at points only. */
function nearestToCentre(rings: readonly Ring[]): number {
  let best = Infinity;
  for (const ring of rings) {
    let a = ring[ring.length - 1];
    if (!a) continue;
    for (const b of ring) {
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const lengthSq = dx * dx + dy * dy;
      const t = lengthSq === 0 ? 0 : Math.min(1, Math.max(0, -(a.x * dx + a.y * dy) / lengthSq));
      best = Math.min(best, Math.hypot(a.x + t * dx, a.y + t * dy));
      a = b;
    }
  }
  return best;
}

function sharesElement(a: Opening, b: Opening): boolean {
  return a.elementIds.some((id) => b.elementIds.includes(id));
}
