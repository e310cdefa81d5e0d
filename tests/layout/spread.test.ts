import { expect, test } from 'vitest';
import { FACES } from '../../fonts/catalogue.ts';
import type { DesignElement } from '../../geometry/design/schema.ts';
import { codes, border, lay, lineText, onPlate, ringText, RULES } from './set-up.ts';
import { jstsDistance } from './jsts-distance.ts';

/** Pairs that kern, thin signs between wide letters, words that come close. */
const TEXT = 'AVATAR T.T L’AVI ‘W’ fjord 7/4';

test.each(FACES.filter((face) => !face.joins))(
  '$id: letters keep the least web, by a second library',
  async ({ id }) => {
    const texts: DesignElement[] = [
      ringText({ face: id, text: TEXT, inner: 0.82, outer: 0.9 }),
      ringText({ face: id, text: TEXT, inner: 0.6, outer: 0.68, reads: 'inward', tracking: -0.15 }),
      lineText({ face: id, text: TEXT, capHeight: 0.1, tracking: -0.2 }),
    ];
    for (const element of texts) {
      const { shapes } = await lay([element], 400);
      const edges = shapes.map(onPlate);
      for (let i = 0; i < edges.length; i++) {
        for (let j = i + 1; j < Math.min(edges.length, i + 4); j++) {
          const gap = jstsDistance(edges[i] ?? [], edges[j] ?? []);
          expect(gap, `${shapes[i]?.label} to ${shapes[j]?.label}, ${element.kind}`).toBeGreaterThanOrEqual(
            RULES.leastWebMm,
          );
        }
      }
    }
  },
);

test('letters are moved no more than needed, and it is said by how much', async () => {
  const layout = await lay([lineText({ text: 'HIH', tracking: -0.2 })], 400);
  const [h, i] = layout.shapes.map(onPlate);
  const gap = jstsDistance(h ?? [], i ?? []);
  expect(gap).toBeGreaterThanOrEqual(1.52);
  expect(gap).toBeLessThan(1.53);
  const note = layout.findings.find((finding) => finding.code === 'letters-spread');
  expect(note?.severity).toBe('note');
  expect(note?.measuredMm).toBeGreaterThan(1);
});

test('letters of a joining script are left as they are', async () => {
  expect(codes(await lay([lineText({ face: 'great-vibes-400', text: 'Olive & Ben', capHeight: 0.2 })]))).toEqual([]);
});

test.each(['dashes', 'beads', 'rope'] as const)(
  '%s keep web and bridge between neighbours, spread evenly',
  async (style) => {
    for (const count of ['auto', 7, 720] as const) {
      for (const [inner, outer] of [
        [0.9, 0.95],
        [0.3, 0.5],
        [0.93, 0.94],
      ] as const) {
        const { shapes } = await lay([border({ style, count, inner, outer })], 300);
        const edges = shapes.map(onPlate);
        const gaps = edges.map((edge, i) => jstsDistance(edge, edges[(i + 1) % edges.length] ?? []));
        const what = `${String(count)} between ${inner} and ${outer}`;
        expect(Math.min(...gaps), what).toBeGreaterThanOrEqual(RULES.leastBridgeMm);
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(0.01);
        expect(new Set(shapes.map((s) => s.storeKey)).size).toBe(1);
        for (const p of edges.flat(2)) {
          const radius = Math.hypot(p.x, p.y) / 150;
          expect(radius, what).toBeGreaterThan(inner - 0.001);
          expect(radius, what).toBeLessThan(outer + 0.001);
        }
        if (count === 7) expect(shapes.length).toBe(7);
      }
    }
  },
);

test('a ring is round to a thousandth of a millimetre', async () => {
  const { shapes } = await lay([border({})], 1500);
  const radii = shapes.flatMap((s) => onPlate(s)).map((ring) => ring.map((p) => Math.hypot(p.x, p.y)));
  expect(radii.length).toBe(2);
  for (const ring of radii) {
    const wanted = Math.max(...ring) > 700 ? 712.5 : 675;
    for (const r of ring) expect(Math.abs(r - wanted)).toBeLessThan(0.001);
  }
});
