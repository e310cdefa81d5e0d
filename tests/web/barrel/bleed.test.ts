import { describe, expect, it } from 'vitest';
import type { HeadSurface, SideSurface } from '../../../geometry/barrel/surface.ts';
import { bleedBands } from '../../../web/barrel/solid/bleed-bands.ts';

describe('paint that creeps under the plate', () => {
  it('is not drawn where the plate lies close', () => {
    const flat: HeadSurface = { kind: 'head', headDiameterMm: 530, crownMm: 0, plateDiameterMm: 500 };
    expect(bleedBands(flat, 250)).toEqual([]);
  });

  it('grows towards the rim of a plate on a bulging head, by sagitta and the angle of the spray', () => {
    const bulging: HeadSurface = { kind: 'head', headDiameterMm: 530, crownMm: 8, plateDiameterMm: 500 };
    const bands = bleedBands(bulging, 250);
    const last = bands.at(-1)!;
    expect([last.fromMm, last.toMm]).toEqual([218.75, 250]);
    // Chord and sagitta at the band's middle, and 20 degrees off straight (a rule of thumb).
    const radius = (8 ** 2 + 265 ** 2) / 16;
    const gap = radius - Math.sqrt(radius ** 2 - 234.375 ** 2);
    expect(last.bleedMm).toBeCloseTo(gap * Math.tan(Math.PI / 9), 9);
    expect(bands.map((b) => b.bleedMm)).toEqual([...bands.map((b) => b.bleedMm)].sort((a, b) => a - b));
  });

  it('grows away from the bilge on a side', () => {
    const side: SideSurface = {
      kind: 'side',
      bilgeRadiusMm: 330,
      endRadiusMm: 285,
      lengthMm: 900,
      thicknessMm: 1,
      lines: 'up-staves',
    };
    const along = bleedBands(side, 160);
    expect(along.length).toBeGreaterThan(3);
    expect(bleedBands({ ...side, lines: 'along-hoops' }, 160)).toEqual(along);
  });
});
