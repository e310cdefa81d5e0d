import * as opentype from 'opentype.js';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { largestFitting } from '../../geometry/layout/fit-size.ts';
import type { Extent } from '../../geometry/layout/placed.ts';
import { codes, FREE_RULES, lay, lineText, ringText } from './set-up.ts';

const RADIUS_MM = 260;

function box(extents: readonly Extent[]): Extent & { kind: 'box' } {
  const [extent] = extents;
  if (extent?.kind !== 'box') throw new Error('no box');
  return extent;
}

function sector(extents: readonly Extent[]): Extent & { kind: 'sector' } {
  const [extent] = extents;
  if (extent?.kind !== 'sector') throw new Error('no sector');
  return extent;
}

describe('the largest size that fits', () => {
  it('is the asked one when that fits, and the span over the growth when ink grows in step', () => {
    expect(largestFitting(20, 100, (mm) => 4 * mm)).toBe(20);
    const found = largestFitting(50, 100, (mm) => 4 * mm);
    expect(found).toBeLessThanOrEqual(25);
    expect(found).toBeGreaterThan(25 * 0.998);
  });

  it('holds for ink that grows by leaps, and gives the least height where nothing fits', () => {
    const leaps = (mm: number) => (mm < 18 ? 3 * mm : 3 * mm + 60);
    const found = largestFitting(50, 100, leaps);
    expect(leaps(found)).toBeLessThanOrEqual(100);
    expect(found).toBeGreaterThan(17.8);
    expect(largestFitting(50, 10, (mm) => 40 + mm)).toBeCloseTo(2.5);
  });
});

describe('text that fills its extent by size', () => {
  it('fills the width of its line without a word of complaint, in natural spacing', async () => {
    const wide = await lay([lineText({ capHeight: 0.4, fit: { width: 1, by: 'size' } })]);
    const at = box(wide.extents);
    expect(at.widthMm).toBeLessThanOrEqual(RADIUS_MM + 1e-6);
    expect(at.widthMm).toBeGreaterThan(RADIUS_MM * 0.998);
    expect(at.heightMm).toBeLessThan(0.4 * RADIUS_MM);
    expect(codes(wide)).toEqual([]);
    // Set naturally at the height found, it is the very same text.
    const natural = await lay([lineText({ capHeight: at.heightMm / RADIUS_MM })]);
    expect(box(natural.extents).widthMm).toBeCloseTo(at.widthMm, 3);
  });

  it('is never taller than asked: a short text keeps its height and leaves room', async () => {
    const short = await lay([lineText({ text: 'I', capHeight: 0.15, fit: { width: 1, by: 'size' } })]);
    expect(box(short.extents).heightMm).toBeCloseTo(0.15 * RADIUS_MM, 9);
    expect(box(short.extents).widthMm).toBeLessThan(RADIUS_MM / 4);
  });

  it('goes into its part of the ring, about the middle of its band, for either way of reading', async () => {
    for (const reads of ['outward', 'inward'] as const) {
      const laid = await lay([ringText({ inner: 0.6, outer: 0.86, reads, fit: { spanDeg: 120, by: 'size' } })]);
      const at = sector(laid.extents);
      const span = at.endDeg - at.startDeg;
      expect(span).toBeLessThanOrEqual(120.001);
      expect(span).toBeGreaterThan(119.7);
      expect((at.innerMm + at.outerMm) / 2).toBeCloseTo(0.73 * RADIUS_MM, 6);
      expect(at.outerMm - at.innerMm).toBeLessThan(0.26 * RADIUS_MM);
      // The web between letters may be noted; nothing is squeezed, too long or over the edge.
      expect(codes(laid).filter((c) => c !== 'note letters-spread')).toEqual([]);
    }
  });

  it('all round, its ends stand apart', async () => {
    const text = 'MARROW LANE PERRY AGED IN OLD OAK • ';
    const laid = await lay([ringText({ text, inner: 0.5, outer: 0.86, fit: { spanDeg: 360, by: 'size' } })]);
    const at = sector(laid.extents);
    expect(at.endDeg - at.startDeg).toBeLessThan(359);
    expect(at.endDeg - at.startDeg).toBeGreaterThan(300);
    expect(codes(laid).filter((c) => c.startsWith('stop'))).toEqual([]);
  });

  it('spread by spacing is as it was before', async () => {
    const spread = await lay([lineText({ fit: { width: 1.2, by: 'spacing' } })]);
    const plain = await lay([lineText({ fit: { width: 1.2 } })]);
    expect(spread).toEqual(plain);
  });

  it('agrees with opentype.js: its advance widths give the same height where no kerning or web asks for more', async () => {
    const file = createRequire(import.meta.url).resolve(
      '@fontsource/stardos-stencil/files/stardos-stencil-latin-700-normal.woff',
    );
    const bytes = readFileSync(file);
    const font = opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
    const text = 'IHIH';
    const glyphs = [...text].map((char) => font.charToGlyph(char));
    const boxes = glyphs.map((glyph) => glyph.getBoundingBox());
    let kerning = 0;
    glyphs.slice(1).forEach((glyph, i) => (kerning += font.getKerningValue(glyphs[i]!, glyph)));
    const advances = glyphs.slice(0, -1).reduce((sum, glyph) => sum + (glyph.advanceWidth ?? 0), 0);
    const ink = advances + kerning - (boxes[0]?.x1 ?? 0) + (boxes.at(-1)?.x2 ?? 0);
    const capHeight = font.charToGlyph('H').getBoundingBox().y2;
    const laid = await lay([lineText({ text, capHeight: 1, fit: { width: 1, by: 'size' } })], 520, FREE_RULES);
    const expected = (RADIUS_MM * capHeight) / ink;
    expect(box(laid.extents).heightMm).toBeLessThanOrEqual(expected * 1.0005);
    expect(box(laid.extents).heightMm).toBeGreaterThan(expected * 0.998);
  });
});
