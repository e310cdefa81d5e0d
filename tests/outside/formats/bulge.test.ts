import { describe, expect, it } from 'vitest';
import { fileBulge } from '../../../geometry/files/numbers.ts';
import { arcOf, contourAreaMm2, contourLengthMm, pointOnArc } from '../../../geometry/measure/arc.ts';

/**
 * DXF reference, LWPOLYLINE group 42, and the CAD vendor's page on reading a bulge: tangent of a quarter of the arc's
 * angle, positive counter-clockwise, 0 straight, 1 a half circle; radius = chord (1 + b^2) / (4 |b|); sagitta = |b| chord / 2.
 */
describe('bulge, against the DXF reference', () => {
  it.each([
    [90, '0.4142135624'],
    [180, '1'],
    [60, '0.2679491924'],
    [-90, '-0.4142135624'],
  ])('an arc of %d degrees is written as %s', (degrees, text) => {
    expect(fileBulge(Math.tan((degrees * Math.PI) / 180 / 4))).toBe(text);
  });

  it('rebuilds an arc from its bulge to 1e-9', () => {
    for (const degrees of [1, 30, 90, 179, 180, -45, -120]) {
      for (const radius of [0.1, 7, 266.7]) {
        const sweep = (degrees * Math.PI) / 180;
        const on = (share: number) => ({
          x: 3 + radius * Math.cos(0.7 + sweep * share),
          y: -5 + radius * Math.sin(0.7 + sweep * share),
        });
        const arc = arcOf({ ...on(0), bulge: Math.tan(sweep / 4) }, on(1))!;
        // A bulge of one degree is built from a short chord: the tolerance is relative to the radius.
        const close = (a: { x: number; y: number }, b: { x: number; y: number }) =>
          expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-9 * Math.max(1, radius / 100));
        close(arc.centre, { x: 3, y: -5 });
        close(pointOnArc(arc, 0.5), on(0.5));
        close(pointOnArc(arc, 1), on(1));
        expect(arc.radiusMm).toBeCloseTo(radius, 8);
      }
    }
  });

  it('has the sagitta and the radius that the reference gives', () => {
    const bulge = 0.3;
    const chord = 20;
    const arc = arcOf({ x: 0, y: 0, bulge }, { x: chord, y: 0 })!;
    expect(arc.radiusMm).toBeCloseTo((chord * (1 + bulge ** 2)) / (4 * bulge), 12);
    // Counter-clockwise from left to right runs below the chord.
    expect(pointOnArc(arc, 0.5).y).toBeCloseTo((-bulge * chord) / 2, 12);
  });

  it('has the area and circumference of a circle written as two half circles', () => {
    const circle = [
      { x: 50, y: 0, bulge: 1 },
      { x: -50, y: 0, bulge: 1 },
    ];
    expect(contourAreaMm2(circle)).toBeCloseTo(Math.PI * 2500, 9);
    expect(contourLengthMm(circle)).toBeCloseTo(Math.PI * 100, 9);
  });
});
