import { describe, expect, it } from 'vitest';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { writeSvg } from '../../geometry/files/svg/svg.ts';
import { perimeterMm, regionAreaMm2, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import { svgPathPoints } from '../readers/svg-reader.ts';
import { HAND_PRINT, HAND_PRINT_SHOWN, handDesign, handPlate } from './hand-plate.ts';

const pathsOf = (svg: string) => [...svg.matchAll(/ d="([^"]+)"/g)].map((m) => svgPathPoints(m[1]!));

describe('SVG', () => {
  it('is in real millimetres: viewBox and size agree', () => {
    const svg = writeSvg(handDesign(), handPlate(533.4), planCuts(handPlate(533.4)));
    const [, width, height, box] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg)!;
    const [x, y, w, h] = box!.split(' ').map(Number);
    expect([w, h]).toEqual([Number(width), Number(height)]);
    expect([x, y]).toEqual([-w! / 2, -h! / 2]);
    expect(svg).toContain('<circle cx="0" cy="0" r="266.7"/>');
    expect(svg).toContain(`Fingerprint ${HAND_PRINT_SHOWN}, whole ${HAND_PRINT}.`);
  });

  it.each([120, 533.4])('keeps area and length of the plate of %d mm within 0.1 %', (diameterMm) => {
    const plate = handPlate(diameterMm);
    const plan = planCuts(plate);
    const rings = pathsOf(writeSvg(handDesign(), plate, plan));
    expect(rings.length).toBe(plate.openings.length);
    const asked = plate.openings.reduce((sum, o) => sum + regionAreaMm2(o.region), 0);
    // y runs down in SVG, so that what went counter-clockwise goes clockwise: minus.
    const area = rings.reduce((sum, ring) => sum - signedAreaMm2(ring), 0);
    expect(Math.abs(area / asked - 1)).toBeLessThan(0.001);
    const length = rings.reduce((sum, ring) => sum + perimeterMm(ring), 0) + Math.PI * diameterMm;
    expect(Math.abs(length / plan.cuttingLengthMm - 1)).toBeLessThan(0.001);
  });

  it('shows the plate the right way up: the foot of the L is below its top', () => {
    const plate = handPlate(400);
    const only = { ...plate, openings: plate.openings.filter((o) => o.word === 'initial/1') };
    const ring = pathsOf(writeSvg(handDesign(), only, planCuts(only)))[0]!;
    const low = Math.max(...ring.map((p) => p.y));
    const foot = ring.filter((p) => Math.abs(p.y - low) < 0.01).map((p) => p.x);
    const high = Math.min(...ring.map((p) => p.y));
    const top = ring.filter((p) => Math.abs(p.y - high) < 0.01).map((p) => p.x);
    expect(Math.max(...foot) - Math.min(...foot)).toBeGreaterThan(2 * (Math.max(...top) - Math.min(...top)));
  });

  it.each(['<script>alert(1)</script>', 'a & b "c"', 'x\u0000\u0008y\ud800', ']]>'])(
    'escapes the title %j',
    (title) => {
      const svg = writeSvg(handDesign({ title }), handPlate(100), planCuts(handPlate(100)));
      const inner = /<title>([\s\S]*?)<\/title>/.exec(svg)![1]!;
      expect(inner).not.toMatch(/[<>]|&(?!amp;|lt;|gt;|quot;)/);

      expect(svg).not.toMatch(/[\u0000-\u0008]/);
      expect(new TextDecoder().decode(new TextEncoder().encode(svg)) === svg).toBe(true);
    },
  );
});
