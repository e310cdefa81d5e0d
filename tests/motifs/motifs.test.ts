import { describe, expect, test } from 'vitest';
import { motifById, MOTIFS } from '../../geometry/motifs/catalogue.ts';
import { MOTIF_LABELS } from '../../geometry/motifs/labels.ts';
import { drawMotif } from '../../geometry/motifs/draw-motif.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { outlineBox } from '../../geometry/measure/outline-box.ts';
import { metalAround } from '../judge/metal.ts';
import { partAreas, polygon, unionOf } from '../judge/jts.ts';
import { settings, STOCKS } from './cases.ts';
import { makeMotif } from './make-motif.ts';

/** What stops a motif 40 mm high in 3 mm plywood, whose webs and bridges are 3 mm wide; all others are ready to cut. */
const TOO_SMALL_IN_PLYWOOD: Readonly<Record<string, readonly string[]>> = {
  sheaf: ['web-too-thin'],
  hopCone: ['web-too-thin'],
  bee: ['part-swallowed'],
  barrel: ['bridge-too-thin', 'web-too-thin'],
};

test('there are at least sixteen, each with a name of its own', () => {
  expect(MOTIFS.length).toBeGreaterThanOrEqual(16);
  expect(new Set(MOTIFS.map((m) => m.id)).size).toBe(MOTIFS.length);
  expect(motifById('bee')?.label).toBe('bee');
  expect(motifById('no such thing')).toBeUndefined();
  expect(Object.entries(MOTIF_LABELS)).toEqual(MOTIFS.map((m) => [m.id, m.label]));
});

describe.each(MOTIFS.map((m) => [m.id, m] as const))('%s', (id, motif) => {
  test('is drawn one high about its middle, of rings that neither cross nor touch, whatever is set', () => {
    for (const options of settings(motif)) {
      const outline = drawMotif(motif, options);
      const box = outlineBox(outline)!;
      expect(box.maxY).toBeCloseTo(0.5, 9);
      expect(box.minY).toBeCloseTo(-0.5, 9);
      expect(box.maxX).toBeCloseTo(-box.minX, 9);
      // As large as a plate takes it; JTS refuses areas whose rings cross.
      const rings = flattenOutline(outline, 1e-5).map((ring) => ring.map((p) => ({ x: p.x * 600, y: p.y * 600 })));
      const solid = rings.filter((ring) => area(ring) > 0);
      const holes = rings.filter((ring) => area(ring) < 0);
      const sum = solid.reduce((s, ring) => s + area(ring), 0);
      const parts = unionOf(solid.map((ring) => polygon(ring)));
      expect(parts.getArea() / sum).toBeCloseTo(1, 4);
      expect(partAreas(parts).length).toBe(solid.length);
      expect(holes.length).toBeLessThanOrEqual(6);
      // Lines and curves, not thousands of points.
      expect(outline.length).toBeLessThan(900);
    }
  });

  test('out of range is the nearest that is in range', () => {
    for (const o of motif.options) {
      expect(drawMotif(motif, { [o.id]: o.most + 1000 })).toEqual(drawMotif(motif, { [o.id]: o.most }));
      expect(drawMotif(motif, { [o.id]: o.least - 1000 })).toEqual(drawMotif(motif, { [o.id]: o.least }));
    }
  });

  test.each(STOCKS.map((s) => [s.material, s] as const))('holds together at 40 mm in %s', (_, stock) => {
    for (const options of stock === STOCKS[0] ? settings(motif) : [{}]) {
      const { result } = makeMotif(id, 40, options, stock);
      const metal = metalAround(
        result.openings.map((o) => o.region),
        20,
      );
      expect(metal.pieces, JSON.stringify(options)).toBe(1);
      expect(metal.shrunk((0.98 * result.rules.leastBridgeMm) / 2).pieces, JSON.stringify(options)).toBe(1);
      const stops = result.findings.filter((f) => f.severity === 'stop').map((f) => f.code);
      // In 1.5 mm steel all are ready; thick plywood may say of some that they are too small for it.
      const allowed = stock === STOCKS[0] ? [] : (TOO_SMALL_IN_PLYWOOD[id] ?? []);
      expect(
        stops.filter((code) => !allowed.includes(code)),
        JSON.stringify(options),
      ).toEqual([]);
    }
  });
});

function area(ring: readonly { x: number; y: number }[]): number {
  return ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
}
