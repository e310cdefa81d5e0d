import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design, DesignElement } from '../../geometry/design/schema.ts';
import { createCache } from '../../geometry/cache.ts';
import { type LaidElement, layOut } from '../../geometry/layout/lay-out.ts';
import type { Layout, PlacedShape } from '../../geometry/layout/placed.ts';
import { placeRings } from '../../geometry/layout/rail.ts';
import { ringsGap } from '../../geometry/measure/distance.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { ringBox } from '../../geometry/measure/ring.ts';

const RULES = { leastWebMm: 1.5, leastBridgeMm: 2, leastOpeningMm: 0.3 };
const RADIUS_MM = 250;

function wedding(initials: string, change: (e: DesignElement) => DesignElement = (e) => e): Design {
  const read = readDesign(readFileSync('web/demo/golden-wedding.json', 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  const elements = read.design.elements.map((e) =>
    change(e.id === 'initials' ? ({ ...e, text: initials } as DesignElement) : e),
  );
  return { ...read.design, elements };
}

async function lay(design: Design): Promise<Layout> {
  const { faces } = await loadFaces(design);
  return layOut(design, 2 * RADIUS_MM, RULES, faces);
}

const rings = (s: PlacedShape) => placeRings(flattenOutline(s.outline, 0.01), s.placement);
const heightOf = (s: PlacedShape) => {
  const boxes = rings(s).map(ringBox);
  return Math.max(...boxes.map((b) => b.maxY)) - Math.min(...boxes.map((b) => b.minY));
};
const ofInitials = (laid: Layout) => laid.shapes.filter((s) => s.elementId === 'initials');

function leastGap(laid: Layout, within: number): number {
  const others = laid.shapes.filter((s) => s.elementId !== 'initials');
  return Math.min(
    ...ofInitials(laid).flatMap((s) => others.map((o) => ringsGap(rings(s), rings(o), within)?.mm ?? within)),
  );
}

describe('what takes the room that is left', () => {
  it.each(['M & H', 'W & M', 'H & N', 'K & R', 'Æ & Ö', 'Q & J', 'W', 'JMK & WMQ'])(
    '%s keeps its distance from all else, and is no smaller than it must be',
    async (text) => {
      const laid = await lay(wedding(text));
      const wanted = 0.06 * RADIUS_MM;
      const gap = leastGap(laid, wanted * 1.2);
      expect(gap).toBeGreaterThanOrEqual(wanted - 0.02);
      const [extent] = laid.extents.filter((e) => e.elementId === 'initials');
      const capMm = extent?.kind === 'box' ? extent.heightMm : 0;
      // either as large as asked, or so near that one hundredth more would be too near
      if (capMm < 0.46 * RADIUS_MM - 0.01) expect(gap).toBeLessThan(wanted + 1);
    },
  );

  it('sets both initials equally high and what joins them as near to either', async () => {
    for (const text of ['M & H', 'W&M', 'E + F', 'H  &  I']) {
      const [left, joiner, right] = ofInitials(await lay(wedding(text)));
      expect(heightOf(left!) / heightOf(right!)).toBeCloseTo(1, 1);
      const [a, b, c] = [left, joiner, right].map((s) => rings(s!).map(ringBox));
      const before = Math.min(...b!.map((x) => x.minX)) - Math.max(...a!.map((x) => x.maxX));
      const after = Math.min(...c!.map((x) => x.minX)) - Math.max(...b!.map((x) => x.maxX));
      expect(before).toBeCloseTo(after, 1);
      expect(heightOf(joiner!)).toBeLessThan(0.75 * heightOf(left!));
    }
  });

  it('a drawing grows no larger than its ring leaves it', async () => {
    const drawing = {
      kind: 'motif',
      id: 'initials',
      motif: 'anchor',
      around: 'once',
      size: 2,
      turnDeg: 0,
      x: 0,
      y: 0.1,
    } as const;
    const free = await lay(wedding('', (e) => (e.id === 'initials' ? drawing : e)));
    const fitted = await lay(wedding('', (e) => (e.id === 'initials' ? { ...drawing, room: 0.04 } : e)));
    expect(leastGap(free, 10)).toBe(0);
    expect(leastGap(fitted, 12)).toBeGreaterThanOrEqual(10 - 0.02);
  });

  it('does not depend on what a store already knows', async () => {
    const store = createCache<LaidElement>(1000);
    for (const text of ['W & M', 'I & J', 'W & M']) {
      for (const golden of ['GOLDEN WEDDING', 'ÅÅÅÅ', 'GOLDEN WEDDING']) {
        const design = wedding(text, (e) => (e.id === 'golden' ? ({ ...e, text: golden } as DesignElement) : e));
        const { faces } = await loadFaces(design);
        const kept = layOut(design, 2 * RADIUS_MM, RULES, faces, store);
        expect(kept).toEqual(layOut(design, 2 * RADIUS_MM, RULES, faces));
      }
    }
  });

  it('is as asked where nothing is in its way, to the last digit', async () => {
    const plain = await lay(
      wedding('I', (e) => (e.id === 'initials' ? ({ ...e, capHeight: 0.2, room: undefined } as DesignElement) : e)),
    );
    const roomy = await lay(
      wedding('I', (e) => (e.id === 'initials' ? ({ ...e, capHeight: 0.2 } as DesignElement) : e)),
    );
    expect(ofInitials(roomy)).toEqual(ofInitials(plain));
  });
});
