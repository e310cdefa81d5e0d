import { describe, expect, it } from 'vitest';
import { barrelById } from '../../../geometry/barrel/barrels.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { arrangeAll } from '../../../web/barrel/solid/arrange.ts';
import { barrelOf, fittingBarrel } from '../../../web/barrel/solid/measures.ts';
import { outsideMm } from '../../../web/barrel/solid/shell.ts';

const measured = (mm: number): Pick<Design, 'head' | 'surface'> => ({
  head: { source: { kind: 'measured', alongMm: mm + 4, acrossMm: mm }, clearanceMm: 6, crownMm: 0 },
  surface: 'head',
});
const known = (barrel: string): Pick<Design, 'head' | 'surface'> => ({
  head: { source: { kind: 'barrel', barrel }, clearanceMm: 6, crownMm: 0 },
  surface: 'head',
});

describe('the barrel that is drawn', () => {
  it('has the measured head, and a chime as thick as its staves around it', () => {
    const barrel = barrelOf(measured(528));
    expect([barrel.headAcrossMm, barrel.headAlongMm]).toEqual([528, 532]);
    expect(barrel.endMm).toBeCloseTo(530 + 2 * barrel.staveMm, 9);
    expect(barrel.bilgeMm).toBeGreaterThan(barrel.endMm);
  });

  it('takes bilge and length of a known barrel from the table', () => {
    const barrel = barrelOf(known('bordeaux-225'));
    const { bilgeMm, heightMm } = barrelById('bordeaux-225')!;
    expect(barrel.bilgeMm).toBe((bilgeMm!.least + bilgeMm!.most) / 2);
    expect(barrel.lengthMm).toBe((heightMm!.least + heightMm!.most) / 2);
  });

  it('runs from the bilge in the middle to the ends', () => {
    const barrel = barrelOf(known('american-53'));
    expect(outsideMm(barrel, 0)).toBe(barrel.bilgeMm / 2);
    expect(outsideMm(barrel, barrel.lengthMm / 2)).toBeCloseTo(barrel.endMm / 2, 9);
  });

  it('shows a small plate on a barrel that it fits, side by side with the large one on one floor', () => {
    const design = measured(528);
    expect(fittingBarrel(design, 516)).toEqual(barrelOf(design));
    const small = fittingBarrel(design, 258);
    expect(small.headAcrossMm).toBeGreaterThanOrEqual(258 + 12);
    expect(small.headAcrossMm).toBeLessThan(1.26 * (258 + 12));
    const stock: Design['stock'] = { material: 'stainless-304', thicknessMm: 1, process: 'laser', use: 'paint' };
    const plates = [516, 258].map((diameterMm) => ({ diameterMm }) as never);
    const [a, b] = arrangeAll({ ...design, stock }, plates);
    expect(a!.pose.floorY + a!.y).toBeCloseTo(b!.pose.floorY + b!.y, 9);
    expect(b!.x - a!.x).toBeGreaterThan(a!.pose.halfWidthMm + b!.pose.halfWidthMm);
  });

  it('draws a barrel for measures that make no sense', () => {
    for (const mm of [0, -5, 99_999]) {
      const barrel = barrelOf(measured(mm));
      expect(Object.values(barrel).every((value) => Number.isFinite(value) && value > 0)).toBe(true);
    }
  });
});
