import { describe, expect, it } from 'vitest';
import { planCuts } from '../../../geometry/cutplan/plate/plan-cuts.ts';
import { paperWords } from '../../../geometry/files/paper/paper-words.ts';
import { PAPERS } from '../../../geometry/files/paper/page-size.ts';
import { writeSvg } from '../../../geometry/files/svg/svg.ts';
import { MM_PER_INCH } from '../../../geometry/units.ts';
import { handDesign, handPlate } from '../../files/hand-plate.ts';

describe('units, against published ones', () => {
  /** CSS Values and Units, absolute lengths: 1 in = 2.54 cm = 96 px = 72 pt. */
  it('25.4 mm of an SVG plate are 96 px and 72 pt', () => {
    const svg = writeSvg(handDesign(), handPlate(25.4 * 2), planCuts(handPlate(25.4 * 2)));
    const width = Number(/width="([\d.]+)mm"/.exec(svg)![1]);
    const units = Number(/viewBox="[-\d.]+ [-\d.]+ ([\d.]+)/.exec(svg)![1]);
    const radius = Number(/<circle[^>]* r="([\d.]+)"/.exec(svg)![1]);
    const radiusMm = (radius * width) / units;
    expect((radiusMm * 96) / 25.4).toBeCloseTo(96, 9);
    expect((radiusMm * 72) / 25.4).toBeCloseTo(72, 9);
  });

  /** International inch of 1959: 25.4 mm exactly. */
  it('an inch is 25.4 mm', () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(paperWords({ language: 'en' }).inches(533.4)).toBe('21.000 in');
  });

  /** ISO 216: A4 = 210 mm x 297 mm. ANSI Y14.1: size A = 8.5 in x 11 in. */
  it('papers are A4 and Letter', () => {
    expect([PAPERS.a4.widthMm, PAPERS.a4.heightMm]).toEqual([210, 297]);
    expect([PAPERS.letter.widthMm / MM_PER_INCH, PAPERS.letter.heightMm / MM_PER_INCH]).toEqual([8.5, 11]);
  });
});
