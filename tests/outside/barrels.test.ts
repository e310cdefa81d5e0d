import { describe, expect, it } from 'vitest';
import { crownRadiusMm } from '../../geometry/barrel/crown.ts';
import { caskVolume, type CaskVariety } from '../../geometry/barrel/volume.ts';
import rows from '../../geometry/barrel/barrels.json' with { type: 'json' };
import { barrelById, BARRELS, VOLUME_NOTES } from '../../geometry/barrel/barrels.ts';
import { insideLitres } from '../../geometry/barrel/inside.ts';
import { middle, STAVE_PER_HEAD } from '../../geometry/barrel/proportions.ts';
import { MM_PER_INCH } from '../../geometry/units.ts';
import { saysTrue, VOLUME_SHARE, volumeError } from '../barrel/volume-notes.ts';

/** Cubic inches in a US (wine) gallon, and in the imperial gallon that the old tables use. */
const WINE_IN3 = 231;
const IMPERIAL_IN3 = 277.274;

describe('legal barrels', () => {
  // 15 U.S.C. 231 and 234; 15 CFR 241.1, 241.4 and 241.5: effective head, distance between heads, outside bulge
  // circumference (staves 0.4 in thick), and the capacity that the law states for them. The law's own figures are
  // round, and the formula is known to come out 0.5 to 1.3 % above them.
  it.each([
    ['dry', 16.75, 26, 64, 7056],
    ['three quarter', 15.25, 23.5, 58.5, 5292],
    ['half', 13.375, 20.5, 51.5, 3528],
    ['third', 11.625, 18, 45.25, 2352],
    ['cranberry', 15.875, 25.25, 58.5, 5826],
  ])('%s barrel', (_, head, length, circumference, legalIn3) => {
    const bung = circumference / Math.PI - 0.8;
    const over = caskVolume('spheroid', length, bung, head) / legalIn3 - 1;
    expect(over).toBeGreaterThan(0.005);
    expect(over).toBeLessThan(0.013);
    expect(caskVolume('spindle', length, bung, head)).toBeLessThan(caskVolume('spheroid', length, bung, head));
  });
});

describe('published cask examples', () => {
  // A 19th-century course of mathematics (Google Books Wtc2AAAAMAAJ, p. 671, problems 12 and 13).
  it.each<[CaskVariety, number]>([
    ['spheroid', 14.869],
    ['spindle', 14.724],
  ])('length 20, bung 16, head 12 in as %s: %f wine gallons', (variety, gallons) => {
    expect(Math.abs(caskVolume(variety, 20, 16, 12) / WINE_IN3 - gallons)).toBeLessThanOrEqual(0.001);
  });

  // The same, by slide rule: 119.1; the Builder-Mechanic's rule by mean diameter gives 119.16.
  it('length 40, bung 32, head 24 in: about 119.1 wine gallons', () => {
    expect(Math.abs(caskVolume('spheroid', 40, 32, 24) / WINE_IN3 - 119.1)).toBeLessThanOrEqual(0.2);
  });

  // American Mechanic, table of capacities of casks: length 1, bung 1 in, by head/bung, imperial gallons.
  it.each<[number, number, number, number, number]>([
    [0.5, 0.0021244, 0.00203, 0.0017704, 0.0016523],
    [0.75, 0.0024195, 0.0023959, 0.002213, 0.0021834],
    [0.8, 0.0024927, 0.0024776, 0.0023227, 0.0023038],
  ])('unit cask, head %f of bung', (head, ...table) => {
    const varieties: CaskVariety[] = ['spheroid', 'spindle', 'paraboloids', 'cones'];
    varieties.forEach((variety, i) => {
      const gallons = caskVolume(variety, 1, 1, head) / IMPERIAL_IN3;
      expect(Math.abs(gallons - (table[i] ?? 0)), variety).toBeLessThanOrEqual(1.01e-7);
    });
  });

  // Definition: 1 US gallon = 231 in3 = 3.785411784 L exactly; 53 gallons are 200.627 L.
  it('53 US gallons are 200.627 litres', () => {
    expect(barrelById('american-53')?.litres.least).toBeCloseTo((53 * WINE_IN3 * 25.4 ** 3) / 1e6, 9);
    expect(barrelById('american-53')?.litres.least).toBeCloseTo(200.627, 3);
  });
});

// Oughtred's formula (19th-century courses of mensuration) on inside measures, against the named capacity.
it.each(BARRELS.map((b) => [b.id, b] as const))(
  '%s holds what its name says, or its row says truly why not',
  (_, barrel) => {
    const error = volumeError(barrel);
    const agrees = error !== undefined && Math.abs(error) <= VOLUME_SHARE;
    expect(agrees).toBe(barrel.volumeNote === undefined);
    expect(saysTrue(barrel)).toBe(true);
  },
);

it('every row of the table names a unit and a reason that are known', () => {
  for (const { volumeNote, ...row } of rows) {
    expect([undefined, ...Object.keys(VOLUME_NOTES)]).toContain(volumeNote);
    for (const [key, figure] of Object.entries(row)) {
      if (typeof figure === 'string') continue;
      expect(figure.least).toBeGreaterThan(0);
      expect(figure.most).toBeGreaterThanOrEqual(figure.least);
      expect(key === 'litres' ? [undefined, 'gal'] : [undefined, 'in']).toContain(figure.unit);
    }
  }
});

it('no other reason would be true of a row', () => {
  for (const barrel of BARRELS) {
    const others = Object.values(VOLUME_NOTES).filter((note) => note !== barrel.volumeNote);
    expect(others.filter((volumeNote) => saysTrue({ ...barrel, volumeNote }))).toEqual([]);
  }
});

it('staves are guessed as thick as those rows have them that publish both', () => {
  const shares = BARRELS.flatMap(({ staveMm, headMm }) => (staveMm ? [middle(staveMm) / middle(headMm)] : []));
  expect(shares.length).toBeGreaterThan(2);
  expect(shares.reduce((sum, share) => sum + share, 0) / shares.length).toBeCloseTo(STAVE_PER_HEAD, 3);
});

it('a barrel that somebody measured holds what its legal size says, staves and heads taken off', () => {
  // The dry barrel of 15 CFR 241 from outside: staves of 0.4 in, heads nine tenths of that, a chime of 1 in.
  const staveMm = 0.4 * MM_PER_INCH;
  const litres = insideLitres({
    bilgeMm: (64 / Math.PI) * MM_PER_INCH,
    lengthMm: 26 * MM_PER_INCH + 2 * (MM_PER_INCH + 0.9 * staveMm),
    headMm: 16.75 * MM_PER_INCH,
    staveMm,
    recessMm: MM_PER_INCH,
  });
  expect(litres / ((7056 * MM_PER_INCH ** 3) / 1e6)).toBeCloseTo(1.0097, 3);
});

// The DXF reference gives radius = chord (1 + b^2) / (4 b) for a bulge b = sagitta / half the chord: the same arc,
// from another field.
it('crowned head: radius from chord and sagitta agrees with the bulge formula of the DXF reference', () => {
  for (const [chord, sagitta] of [
    [520, 4],
    [560, 12],
    [300, 0.5],
  ] as const) {
    const b = sagitta / (chord / 2);
    expect(crownRadiusMm(chord, sagitta)).toBeCloseTo((chord * (1 + b * b)) / (4 * b), 6);
  }
});
