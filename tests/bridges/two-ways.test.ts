import { describe, expect, it } from 'vitest';
import { type Link, findWeakLinks } from '../../geometry/bridges/two-ways.ts';
import { seeded } from '../judge/seeded.ts';

/** Joined without link `out`, by plain flooding: the definition itself. */
function whole(nodes: number, links: readonly Link[], out = -1): boolean {
  const met = new Set([0]);
  for (let grew = true; grew;) {
    grew = false;
    links.forEach(({ a, b }, i) => {
      if (i === out || met.has(a) === met.has(b)) return;
      met.add(a).add(b);
      grew = true;
    });
  }
  return met.size === nodes;
}

describe('findWeakLinks', () => {
  it('agrees with the definition on 500 seeded graphs', () => {
    const random = seeded(11);
    for (let n = 0; n < 500; n++) {
      const nodes = random.whole(1, 8);
      const links = Array.from({ length: random.whole(0, 14) }, () => ({
        a: random.whole(0, nodes - 1),
        b: random.whole(0, nodes - 1),
      }));
      const found = findWeakLinks(nodes, links);
      expect(found.whole).toBe(whole(nodes, links));
      if (!found.whole) continue;
      const weak = links.flatMap((_, i) => (whole(nodes, links, i) ? [] : [i]));
      expect([...found.weak].sort((p, q) => p - q)).toEqual(weak);
    }
  });
});
