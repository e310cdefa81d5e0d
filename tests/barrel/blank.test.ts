import { describe, expect, it } from 'vitest';
import { headDiameter, plateDiameterMm } from '../../geometry/barrel/blank.ts';
import { BARRELS, barrelById } from '../../geometry/barrel/barrels.ts';
import { crownGapMm, crownRadiusMm, sagittaMm } from '../../geometry/barrel/crown.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design, Head, PlateSpec } from '../../geometry/design/schema.ts';

const measured = (alongMm: number, acrossMm: number, clearanceMm = 6): Head => ({
  source: { kind: 'measured', alongMm, acrossMm },
  clearanceMm,
  crownMm: 0,
});
const plate = (diameter: PlateSpec['diameter']): PlateSpec => ({ id: 'p', name: 'Plate', diameter, quantity: 1 });
const size = (head: Head, diameter: PlateSpec['diameter']) => {
  const design: Design = { ...emptyDesign(), head };
  const { diameterMm, findings } = plateDiameterMm(design, plate(diameter));
  return { diameterMm, codes: findings.map((f) => `${f.severity} ${f.code}`) };
};

describe('the blank', () => {
  it('fits the smaller diameter less the clearance on both sides', () => {
    expect(size(measured(533, 528), 'fit')).toEqual({ diameterMm: 516, codes: [] });
    expect(size(measured(528, 533), 'fit')).toEqual({ diameterMm: 516, codes: [] });
  });

  it('is rounded down to half a millimetre, never up', () => {
    expect(size(measured(533.4, 533.4), 'fit').diameterMm).toBe(521);
    expect(size(measured(533.9, 533.9), 'fit').diameterMm).toBe(521.5);
    expect(size(measured(521.7 + 0.3, 600, 0), 'fit').diameterMm).toBe(522);
  });

  it('halves and takes a diameter outright', () => {
    expect(size(measured(533, 528), { share: 0.5 }).diameterMm).toBe(258);
    expect(size(measured(533, 528), { mm: 300.25 })).toEqual({ diameterMm: 300.25, codes: [] });
  });

  it.each<[string, Head, PlateSpec['diameter'], number, string]>([
    ['no head', measured(0, 0), 'fit', 40, 'stop head-diameter-nonsense'],
    ['a negative head', measured(533, -528), 'fit', 40, 'stop head-diameter-nonsense'],
    ['a head as wide as a house', measured(9000, 9000), 'fit', 1500, 'stop plate-diameter-nonsense'],
    ['inches typed as millimetres', measured(21, 21), 'fit', 40, 'stop plate-diameter-nonsense'],
    ['a clearance that eats the head', measured(300, 300, 150), 'fit', 40, 'stop plate-diameter-nonsense'],
    ['a plate of no size', measured(533, 528), { mm: 0 }, 40, 'stop plate-diameter-nonsense'],
    ['a plate below nothing', measured(533, 528), { mm: -5 }, 40, 'stop plate-diameter-nonsense'],
    ['a plate beyond any sheet', measured(533, 528), { mm: 99_999 }, 1500, 'stop plate-diameter-nonsense'],
    ['readings far apart', measured(533, 460), 'fit', 448, 'look head-measures-differ'],
  ])('%s is said and still gives a plate to draw', (_, head, diameter, expectedMm, code) => {
    expect(size(head, diameter)).toEqual({ diameterMm: expectedMm, codes: [code] });
  });

  it('readings 8 % apart pass, a little more does not', () => {
    expect(headDiameter(measured(500, 460)).findings).toEqual([]);
    expect(headDiameter(measured(500, 459.9)).findings).toHaveLength(1);
  });

  it('from the table is made for the smallest head of the kind, and asks to measure', () => {
    const head: Head = { source: { kind: 'barrel', barrel: 'american-53' }, clearanceMm: 6, crownMm: 0 };
    expect(size(head, 'fit')).toEqual({ diameterMm: 521, codes: ['note head-not-measured'] });
    const unknown: Head = { ...head, source: { kind: 'barrel', barrel: 'bathtub' } };
    expect(size(unknown, 'fit')).toEqual({ diameterMm: 521, codes: ['stop unknown-barrel'] });
  });

  it('every barrel of the table gives a plate without a stop', () => {
    for (const barrel of BARRELS) {
      expect(barrelById(barrel.id)).toBe(barrel);
      const head: Head = { source: { kind: 'barrel', barrel: barrel.id }, clearanceMm: 6, crownMm: 0 };
      expect(size(head, 'fit').codes, barrel.id).toEqual(['note head-not-measured']);
      for (const part of [barrel.litres, barrel.headMm, barrel.bilgeMm, barrel.heightMm]) {
        if (!part) continue;
        expect(part.least).toBeLessThanOrEqual(part.most);
        expect(part.source).not.toBe('');
      }
    }
  });
});

describe('the crown', () => {
  it('gives back the crown under a plate as wide as the head', () => {
    for (const crown of [0.5, 3, -3, 20]) expect(crownGapMm(520, crown, 520)).toBeCloseTo(Math.abs(crown), 9);
  });

  it('a sphere through the three points agrees with the radius', () => {
    const r = crownRadiusMm(520, 8);
    // Centre at (0, 8 - r): both the middle (0, 8) and the edge (260, 0) lie r away.
    expect(Math.hypot(260, r - 8)).toBeCloseTo(r, 9);
  });

  it('half the plate has about a quarter of the gap, a flat head none', () => {
    expect(crownGapMm(520, 4, 260) / crownGapMm(520, 4, 520)).toBeCloseTo(0.25, 3);
    expect(crownGapMm(520, 0, 520)).toBe(0);
    expect(sagittaMm(Infinity, 520)).toBe(0);
  });
});
