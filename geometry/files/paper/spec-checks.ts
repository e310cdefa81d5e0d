import { type CheckDimension, findCheckDimensions, listCuts } from '../../cutplan/plate/check-dimensions.ts';
import type { CutPlan } from '../../cutplan/cut-plan.ts';
import type { PlateResult } from '../../plate/plate.ts';
import { limitDeviationMm, type Tolerance } from '../../stock/tolerances.ts';
import type { PaperWords } from './paper-words.ts';
import { INK, type PdfPage } from './pdf-page.ts';

/** A check dimension as it was asked for, and how far it may come out from that. */
export interface SpecCheck extends CheckDimension {
  /** Absent where no table has it. */
  readonly limitMm?: number;
}

/** Lengths across early and late cuts of a plate: what is measured before the sheet is unloaded. */
export function findSpecChecks(
  { plate, plan }: { readonly plate: PlateResult; readonly plan: CutPlan },
  tolerance: Tolerance | undefined,
): SpecCheck[] {
  return findCheckDimensions(listCuts(plan)).map((dimension) => {
    const limitMm = tolerance && limitDeviationMm(tolerance, dimension.mm, plate.rules.thicknessMm);
    return { ...dimension, ...(limitMm !== undefined && { limitMm }) };
  });
}

/** `412.3 ±0.35`, mm; a dash where the plate has no such length. */
export function checkText(check: SpecCheck | undefined, words: PaperWords): string {
  if (!check) return '–';
  return `${words.number(check.mm, 1)}${check.limitMm === undefined ? '' : ` ±${words.plain(check.limitMm)}`}`;
}

/** Ends nearer to each other than this, mm on paper, share one place for their letters. */
const TOGETHER_MM = 4;

/** Both ends of each length, with its letter beside it, on a plate drawn about cx, cy at 1:scale. */
export function drawChecks(
  page: PdfPage,
  checks: readonly CheckDimension[],
  cx: number,
  cy: number,
  scale: number,
): void {
  const places: { x: number; y: number; letters: string }[] = [];
  for (const { label, from, to, mm } of checks) {
    for (const [at, other] of [
      [from, to],
      [to, from],
    ] as const) {
      const [x, y] = [cx + at.x / scale, cy - at.y / scale];
      page.doc.circle(x, y, 0.45).fillColor(INK.copper).fill();
      // Inwards: outside of the rim stand the plate's name and dimension.
      const beside = { x: x + (2.4 * (other.x - at.x)) / mm, y: y - (2.4 * (other.y - at.y)) / mm };
      const near = places.find((p) => Math.hypot(p.x - beside.x, p.y - beside.y) < TOGETHER_MM);
      if (!near) places.push({ ...beside, letters: label });
      else if (!near.letters.includes(label)) near.letters += label;
    }
  }
  const style = { size: 6.5, bold: true, colour: INK.copper, align: 'centre' } as const;
  for (const { x, y, letters } of places) page.line(letters, x - 4, y + 0.8, 8, style);
}
