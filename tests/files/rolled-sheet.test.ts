import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { packageFile } from '../../fonts/node-faces.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { findRolling } from '../../geometry/files/paper/rolled-plate.ts';
import { writeSpecSheet } from '../../geometry/files/paper/spec-sheet.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { readPdf } from '../readers/pdf-reader.ts';
import { handDesign, handPlate } from './hand-plate.ts';

const face = (weight: number) =>
  new Uint8Array(
    readFileSync(packageFile('@fontsource/source-sans-3', `files/source-sans-3-latin-${weight}-normal.woff`)),
  );
const side = (lines: 'along-hoops' | 'up-staves'): Design => ({
  ...handDesign(),
  surface: { kind: 'side', bilgeMm: 660, endMm: 580, lengthMm: 900, lines, spread: true },
});

async function textsOf(design: Design, plates = 1): Promise<string> {
  const made = Array.from({ length: plates }, (_, i) => handPlate(300, `Plate ${i}`));
  const sheet = await writeSpecSheet(
    design,
    made.map((plate) => ({ plate, plan: planCuts(plate) })),
    { regular: face(400), bold: face(600) },
    BUILT_IN,
  );
  const read = await readPdf(sheet);
  expect(read.pages).toBe(1);
  return read.texts.map((t) => t.text).join(' | ');
}

describe('the sheet of a plate for the side of a barrel', () => {
  it.each([1, 6])('says how to roll it, beside %i plates', async (plates) => {
    const texts = await textsOf(side('along-hoops'), plates);
    expect(texts).toContain('inside radius 330.0 mm');
    if (plates > 1) return;
    expect(texts).toContain('upright, as marked; painted side');
    expect(texts).toMatch(/0\.23 %/);
  });

  it('marks the axis along the staves, whichever way these lie on the plate', () => {
    expect(findRolling(side('along-hoops'), 300)?.axis).toBe('upright');
    expect(findRolling(side('up-staves'), 300)?.axis).toBe('level');
    // (t / 2) / (r + t / 2), plane sections staying plane: Euler-Bernoulli.
    const { thicknessMm } = handDesign().stock;
    expect(findRolling(side('up-staves'), 300)?.strain).toBeCloseTo(thicknessMm / 2 / (330 + thicknessMm / 2), 12);
  });

  it('says nothing of rolling for a plate on the head', async () => {
    expect(await textsOf(handDesign())).not.toContain('radius');
    expect(findRolling(handDesign(), 300)).toBeUndefined();
  });
});
