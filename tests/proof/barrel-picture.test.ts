import { describe, expect, it } from 'vitest';
import { composeBarrelPicture } from '../../geometry/proof/barrel-picture.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { handDesign } from '../files/hand-plate.ts';
import { plannedPlate } from './set-up.ts';

const head = (mm: number): Design['head'] => ({
  source: { kind: 'measured', alongMm: mm, acrossMm: mm },
  clearanceMm: 5,
  crownMm: 0,
});

describe('the picture of a barrel’s end', () => {
  it('shows head and mark in their true proportion', () => {
    const design = handDesign({ head: head(540) });
    const { paths, reachMm } = composeBarrelPicture(design, plannedPlate(500));
    expect(paths.some(({ d }) => d.startsWith('M-270 0A270 270'))).toBe(true);
    expect(reachMm).toBeGreaterThan(270);
    // The beads of the plate lie 0.88 of its radius out, 0.03 of it wide; all in mm, none scaled.
    const mark = paths.find(({ fill, d }) => fill === '#26211d' && d.length > 200)!;
    const xs = [...mark.d.matchAll(/[ML](-?[\d.]+) /g)].map((m) => Number(m[1]));
    expect(Math.max(...xs)).toBeGreaterThan(0.9 * 250);
    expect(Math.max(...xs)).toBeLessThan(0.92 * 250);
  });

  it('is the same every time, and holds nothing but path data and colours', () => {
    const make = () => composeBarrelPicture(handDesign(), plannedPlate(500));
    expect(make()).toEqual(make());
    for (const { d, fill, stroke } of make().paths) {
      expect(d).toMatch(/^[MLACZ0-9. -]*$/);
      expect(d).not.toContain('NaN');
      for (const colour of [fill, stroke]) if (colour !== undefined) expect(colour).toMatch(/^#[0-9a-f]{6}$/);
    }
  });

  it('chars where a torch is used, and paints in the colour asked for', () => {
    const stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser' };
    const fills = (use: 'paint' | 'torch', paint?: string) =>
      composeBarrelPicture(handDesign({ stock: { ...stock, use } }), plannedPlate(500), paint).paths.map((p) => p.fill);
    expect(fills('paint', '#123456')).toContain('#123456');
    expect(fills('torch')).toContain('#2b1a10');
    expect(fills('torch')).not.toContain('#26211d');
  });

  it('lays a plate for the side flat, without an end around it', () => {
    const side = {
      kind: 'side',
      bilgeMm: 660,
      endMm: 580,
      lengthMm: 900,
      lines: 'along-hoops',
      spread: false,
    } as const;
    const flat = composeBarrelPicture({ ...handDesign(), surface: side }, plannedPlate(400));
    expect(flat.reachMm).toBeLessThan(1.15 * 200);
  });

  it('stands a plate larger than its head, and a head of no size', () => {
    for (const design of [handDesign({ head: head(100) }), handDesign({ head: head(0) })]) {
      const { paths, reachMm } = composeBarrelPicture(design, plannedPlate(500));
      expect(Number.isFinite(reachMm)).toBe(true);
      expect(paths.every(({ d }) => !d.includes('NaN'))).toBe(true);
    }
  });
});
