import { describe, expect, it } from 'vitest';
import type { CutPlan } from '../../geometry/cutplan/cut-plan.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { writeDxf } from '../../geometry/files/dxf/dxf.ts';
import { perimeterMm, regionAreaMm2, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import { polylinePoints, readDxf } from '../readers/dxf-reader.ts';
import { ezdxfVersion, readWithEzdxf } from '../readers/ezdxf-reader.ts';
import { HAND_PRINT, handDesign, handPlate } from './hand-plate.ts';

const design = handDesign();
const hasEzdxf = ezdxfVersion() !== undefined;

/** A plate of one triangle with one bulged side, small enough to read. */
const golden: CutPlan = {
  contours: [
    {
      kind: 'opening',
      id: 'o1',
      elementIds: ['e1'],
      word: 'e1/0',
      contour: [
        { x: -10, y: -10, bulge: 0 },
        { x: 10, y: -10, bulge: Math.SQRT2 - 1 },
        { x: 1 / 3, y: 10.00004, bulge: -0 },
      ],
    },
    { kind: 'rim', id: 'rim', elementIds: [], diameterMm: 100 },
  ],
  cuttingLengthMm: 0,
  pierces: 2,
};

describe('DXF', () => {
  it('writes the entities exactly so', () => {
    const dxf = writeDxf(design, handPlate(100), golden);
    const from = dxf.indexOf('ENTITIES\r\n');
    const entities = dxf.slice(from, dxf.indexOf('ENDSEC', from)).split('\r\n');
    expect(
      entities
        .map((line) => line.trim())
        .join(' ')
        .trim(),
    ).toBe(
      'ENTITIES 0 LWPOLYLINE 5 100 330 20 100 AcDbEntity 8 OPENINGS 100 AcDbPolyline 90 3 70 1 ' +
        '10 -10 20 -10 10 10 20 -10 42 0.4142135624 10 0.3333 20 10 ' +
        '0 CIRCLE 5 101 330 20 100 AcDbEntity 8 RIM 100 AcDbCircle 10 0 20 0 30 0 40 50 0',
    );
  });

  it('ends every line alike and the file with EOF', () => {
    const dxf = writeDxf(design, handPlate(533.4), planCuts(handPlate(533.4)));
    expect(dxf.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(dxf.endsWith('  0\r\nEOF\r\n')).toBe(true);
    expect(dxf).toMatch(/^[\x20-\x7e\r\n]*$/);
    expect(dxf).not.toMatch(/NaN|Infinity|\de[+-]\d|-0\r/);
  });

  it('is read back by dxf-parser with units, layers, rim and cuts in order', () => {
    const plate = handPlate(533.4);
    const plan = planCuts(plate);
    const read = readDxf(writeDxf(design, plate, plan));
    // DXF reference, HEADER variables: $INSUNITS 4 = millimetres, $MEASUREMENT 1 = metric.
    expect(read.header['$INSUNITS']).toBe(4);
    expect(read.header['$MEASUREMENT']).toBe(1);
    expect(read.header['$EXTMAX']).toMatchObject({ x: 266.7, y: 266.7 });
    expect(read.header['$EXTMIN']).toMatchObject({ x: -266.7, y: -266.7 });
    expect(Object.keys(read.layers).sort()).toEqual(['0', 'OPENINGS', 'RIM']);
    expect(read.entities.map((e) => e.layer)).toEqual([...plate.openings.map(() => 'OPENINGS'), 'RIM']);
    const rim = read.entities.at(-1)!;
    expect(rim.type).toBe('CIRCLE');
    expect(2 * rim.radius!).toBeCloseTo(533.4, 3);
    read.entities.slice(0, -1).forEach((e, i) => {
      const cut = plan.contours[i]!;
      expect(e.shape).toBe(true);
      if (cut.kind !== 'opening') throw new Error('the rim must be last');
      expect(e.vertices!.length).toBe(cut.contour.length);
      cut.contour.forEach((v, k) => expect(e.vertices![k]!.bulge ?? 0).toBeCloseTo(v.bulge, 9));
    });
  });

  it.each([120, 266.7, 533.4])('keeps area and length of the plate of %d mm within 0.1 %', (diameterMm) => {
    const plate = handPlate(diameterMm);
    const plan = planCuts(plate);
    const rings = readDxf(writeDxf(design, plate, plan))
      .entities.slice(0, -1)
      .map((e) => polylinePoints(e));
    const area = rings.reduce((sum, ring) => sum + signedAreaMm2(ring), 0);
    const asked = plate.openings.reduce((sum, o) => sum + regionAreaMm2(o.region), 0);
    expect(Math.abs(area / asked - 1)).toBeLessThan(0.001);
    const length = rings.reduce((sum, ring) => sum + perimeterMm(ring), 0) + Math.PI * diameterMm;
    expect(Math.abs(length / plan.cuttingLengthMm - 1)).toBeLessThan(0.001);
    const ringsMm = plate.openings.reduce((sum, o) => sum + perimeterMm(o.region.outer), 0) + Math.PI * diameterMm;
    expect(Math.abs(plan.cuttingLengthMm / ringsMm - 1)).toBeLessThan(0.001);
  });

  it.runIf(hasEzdxf)('passes the audit of ezdxf, which reads the same', () => {
    const plate = handPlate(533.4);
    const plan = planCuts(plate);
    const read = readWithEzdxf(writeDxf(design, plate, plan));
    expect(read).toMatchObject({ errors: 0, fixes: 0, insunits: 4, measurement: 1, version: 'AC1015' });
    expect(read.layers).toEqual(expect.arrayContaining(['OPENINGS', 'RIM']));
    expect(read.entities.length).toBe(plan.contours.length);
    expect(read.entities.at(-1)).toEqual({ kind: 'CIRCLE', layer: 'RIM', radius: 266.7 });
    for (const [i, cut] of plan.contours.entries()) {
      if (cut.kind !== 'opening') continue;
      expect(read.entities[i]).toMatchObject({ kind: 'LWPOLYLINE', layer: 'OPENINGS', closed: true });
      cut.contour.forEach((v, k) => {
        const [x, y, bulge] = read.entities[i]!.points![k]!;
        expect(Math.hypot(x - v.x, y - v.y)).toBeLessThan(1e-4);
        expect(Math.abs(bulge - v.bulge)).toBeLessThan(1e-9);
      });
    }
  });

  const hostile = {
    'line ends': 'Perry\r\n  0\r\nEOF\r\n',
    'a section of its own': 'x\n  0\nENDSEC\n  0\nEOF',
    'other line ends': 'a\u2028  0\u2028EOF\u0085b\u0000c',
    'letters beyond ASCII': 'Poiré Jørgen 桶 🍐',
    'half a letter': 'a\ud83cb',
    '500 letters': 'M'.repeat(500),
  };
  it.each(Object.entries(hostile))('keeps a title with %s inside its comment', (_, title) => {
    const dxf = writeDxf({ ...design, title }, handPlate(100), golden);
    expect(dxf.split('\r\n').filter((line) => line === 'EOF').length).toBe(1);
    expect(dxf).toMatch(/^[\x20-\x7e\r\n]*$/);
    const lines = dxf.split('\r\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThan(256);
    expect(readDxf(dxf).entities.length).toBe(2);
    if (hasEzdxf) expect(readWithEzdxf(dxf)).toMatchObject({ errors: 0, fixes: 0 });
  });

  it('says in a comment when this is not what was approved', () => {
    const approval = { name: 'Ada Pell', at: '2027-01-04', how: 'paper' as const, fingerprint: 'ffffffff' };
    expect(writeDxf({ ...design, approval }, handPlate(100), golden)).toContain('NOT THE APPROVED DESIGN');
    const right = { ...approval, fingerprint: HAND_PRINT };
    expect(writeDxf({ ...design, approval: right }, handPlate(100), golden)).toContain('Approved by Ada Pell');
  });

  it('refuses a number that is none', () => {
    const rim = { ...golden.contours[1]!, diameterMm: NaN } as CutPlan['contours'][number];
    expect(() => writeDxf(design, handPlate(100), { ...golden, contours: [rim] })).toThrow(/NaN/);
  });
});
