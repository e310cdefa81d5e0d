import type { Stock } from '../../design/schema.ts';
import type { NestGaps, SheetKind } from '../../sheet/sheets.ts';
import { materialWords, processWords } from '../../stock/record-key.ts';
import { materialIn, type Process, processIn, type StockBook } from '../../stock/stock-book.ts';
import { inMm, say } from '../../sentences/say.ts';
import { CUT_EN } from '../../sentences/cut-en.ts';
import type { Refused } from '../../sentences/wording.ts';
import { tabRuleFor } from '../tab-rule.ts';
import type { CutSettings, TabRule } from '../sheet-plan.ts';

type SpeedRow = Process['cutting'][number]['rows'][number];

/**
 * How the shop's machine cuts this stock, or why it cannot be said. Speed and pierce time of a thickness between two
 * rows of the shop's list lie on the line through both; below the first row the first serves, beyond the last nothing
 * is guessed.
 */
export function settingsFor(book: StockBook, stock: Stock): CutSettings | Refused {
  const process = processIn(book, stock.process);
  const material = materialIn(book, stock.material);
  if (!process) return CUT_EN.refused('cost.noProcess', { process: stock.process });
  const pair = {
    process: processWords(process),
    material: material ? materialWords(material) : say('names.text', { text: stock.material }),
  };
  const rows = process.cutting.find((c) => c.materials.includes(stock.material))?.rows ?? [];
  if (rows.length === 0) return CUT_EN.refused('cost.noSpeed', pair);
  const row = rowAt(rows, stock.thicknessMm);
  const last = rows.at(-1)!;
  if (!row)
    return CUT_EN.refused('cost.tooThick', {
      ...pair,
      thickness: inMm(stock.thicknessMm, 2),
      most: inMm(last.thicknessMm, 2),
    });
  const { machine } = process;
  return {
    kerfMm: process.kerfMm.value,
    feedMmMin: row.speedMmMin,
    pierceS: row.pierceS,
    accelerationMmS2: machine.accelerationMmS2.value,
    rapidMmMin: machine.rapidMmMin.value,
    cornerMm: machine.cornerMm.value,
    raiseS: machine.raiseS.value,
    leadInMm: machine.leadInMm.value,
    overlapMm: overlapOf(process),
    tab: tabsOf(process, stock.thicknessMm),
    slats: { pitchMm: machine.slatPitchMm.value, edgeMm: machine.slatEdgeMm.value },
    coolS: machine.coolS.value,
  };
}

/** Jet and torch trail behind and leave a nib where a cut just closes: common practice, no source. */
const LEAST_OVERLAP_MM = 1;

function overlapOf({ kind, kerfMm, machine }: Process): number {
  const usual = kind === 'jet' || kind === 'plasma' ? Math.max(LEAST_OVERLAP_MM, kerfMm.value) : 0;
  return machine.overlapMm?.value ?? usual;
}

/** As the shop says, else by kerf and thickness. */
function tabsOf({ kerfMm, machine }: Process, thicknessMm: number): TabRule {
  const { widthMm, everyMm } = tabRuleFor(kerfMm.value, thicknessMm);
  return { widthMm: machine.tabMm?.value ?? widthMm, everyMm: machine.tabEveryMm?.value ?? everyMm };
}

/** Whole sheets that this stock's material comes in. */
export function sheetKindsFor(book: StockBook, stock: Stock): SheetKind[] {
  return book.sheets
    .filter(({ materials }) => materials === undefined || materials.includes(stock.material))
    .map(({ id, widthMm, heightMm, count }) => ({ id, widthMm, heightMm, ...(count !== undefined && { count }) }));
}

/** What the process leaves between two plates, from rim to rim, and to the edge of a sheet. */
export function gapsFor({ kerfMm, machine }: Process): NestGaps {
  return { betweenMm: machine.skeletonWebMm.value + 2 * kerfMm.value, edgeMm: machine.edgeMm.value + kerfMm.value };
}

/** In kerfs, beside the web's own two: room for the shortest lead-in and the hole it is pierced by. Common practice, no source. */
const LEAST_WEB_KERFS = 1.2;

/**
 * Less than this is refused, whoever asks for it. Both plates' kerfs, and between them either the shortest lead-in or,
 * so that the web neither warps nor burns away, what the process asks of metal this thick; never more than the shop's own
 * web, which stands for what its machine is known to do.
 */
export function leastGapsFor({ kerfMm, machine, webThicknesses }: Process, thicknessMm: number): NestGaps {
  const web = (own: number): number =>
    Math.max(LEAST_WEB_KERFS * kerfMm.value, Math.min(own, webThicknesses.value * thicknessMm));
  return {
    betweenMm: web(machine.skeletonWebMm.value) + 2 * kerfMm.value,
    edgeMm: web(machine.edgeMm.value) + kerfMm.value,
  };
}

/** What is wished, but never less than the least. */
export function gapsAtLeast(wished: NestGaps, least: NestGaps): NestGaps {
  return {
    betweenMm: Math.max(wished.betweenMm, least.betweenMm),
    edgeMm: Math.max(wished.edgeMm, least.edgeMm),
  };
}

function rowAt(rows: readonly SpeedRow[], thicknessMm: number): Omit<SpeedRow, 'thicknessMm'> | undefined {
  const next = rows.findIndex((row) => row.thicknessMm >= thicknessMm);
  const [above, below] = [rows[next], rows[next - 1]];
  if (!above || !below) return above;
  const share = (thicknessMm - below.thicknessMm) / (above.thicknessMm - below.thicknessMm);
  const between = (a: number, b: number): number => a + (b - a) * share;
  return {
    speedMmMin: between(below.speedMmMin, above.speedMmMin),
    pierceS: between(below.pierceS, above.pierceS),
  };
}
