import { FACES } from '../../fonts/catalogue.ts';
import { printableLatin1 } from '../../fonts/coverage.ts';
import { loadFace } from '../../fonts/node-faces.ts';
import type { Face } from '../../geometry/adapters/face.ts';
import { union } from '../../geometry/adapters/clipper.ts';
import { solveUnit, type SolvedUnit } from '../../geometry/bridges/solve-unit.ts';
import type { Stock } from '../../geometry/design/schema.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import type { Outline, PathCommand, Region } from '../../geometry/shapes.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { FLATTEN_ERROR_MM } from '../../geometry/units.ts';
import { metalAround } from '../judge/metal.ts';

/** One letter of one face at one height, cut from one stock. */
export interface SweepCase {
  readonly face: string;
  readonly char: string;
  readonly capMm: number;
  readonly stock: Stock;
}

export const CAP_HEIGHTS_MM = [12, 25, 50, 100] as const;

export const STOCKS: readonly Stock[] = [
  { material: 'stainless-304', thicknessMm: 1, process: 'fibre-laser', use: 'paint' },
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  { material: 'stainless-304', thicknessMm: 3, process: 'fibre-laser', use: 'paint' },
  { material: 'birch-plywood', thicknessMm: 3, process: 'co2-laser', use: 'paint' },
  { material: 'aluminium-5052', thicknessMm: 2, process: 'water-jet', use: 'paint' },
  { material: 'birch-plywood', thicknessMm: 6, process: 'router', use: 'paint' },
];

/** Every face x every printable character of Latin-1 it has x every height x every stock. */
export async function allCases(): Promise<SweepCase[]> {
  const cases: SweepCase[] = [];
  for (const { id } of FACES) {
    const face = await faceOf(id);
    for (const char of printableLatin1()) {
      if ((face.glyph(char)?.outline.length ?? 0) === 0) continue;
      for (const capMm of CAP_HEIGHTS_MM) for (const stock of STOCKS) cases.push({ face: id, char, capMm, stock });
    }
  }
  return cases;
}

/** From this share covered on, the plate is stopped (geometry/bridges/bridge-openings.ts). */
const SWALLOWED = 0.6;

export interface SweepResult {
  /** held: one piece, shrunk too, and whichever one bar is lost. told: the maker says what it could not do. */
  readonly outcome: 'held' | 'told' | 'silent';
  readonly why: string;
  readonly drawn: readonly Region[];
  readonly solved: SolvedUnit;
}

export async function runCase(one: SweepCase): Promise<SweepResult> {
  const face = await faceOf(one.face);
  const { rules } = stockRules(one.stock);
  const drawn = drawnLetter(face, one.char, one.capMm);
  const solved = solveUnit(drawn, rules, 'hidden');
  const why = faultOf(drawn, solved, rules);
  const told = solved.loose.length > 0 || solved.lostParts.length > 0 || solved.covered >= SWALLOWED;
  return { outcome: why === '' ? 'held' : told ? 'told' : 'silent', why, drawn, solved };
}

/** What JTS finds wrong with the metal, or nothing. */
function faultOf(drawn: readonly Region[], solved: SolvedUnit, rules: StockRules): string {
  if (solved.openings.length === 0) return '';
  const metal = metalAround(solved.openings, 2 * rules.leastBridgeMm);
  if (metal.pieces !== 1) return `${metal.pieces} pieces`;
  const shrunk = metal.pieceCountShrunk((0.98 * rules.leastBridgeMm) / 2);
  if (shrunk !== 1) return `${shrunk} pieces when shrunk`;
  for (const [i, bar] of solved.bars.entries()) {
    const pieces = metal.without(bar.outline, drawn).pieces;
    if (pieces !== 1) return `${pieces} pieces without bar ${i}`;
  }
  return '';
}

export function drawnLetter(face: Face, char: string, capMm: number): Region[] {
  const outline = face.glyph(char)?.outline ?? [];
  return union(flattenOutline(scaled(outline, capMm / face.capHeight), FLATTEN_ERROR_MM));
}

function scaled(outline: Outline, by: number): Outline {
  return outline.map((c) => {
    const entries = Object.entries(c).map(([key, v]: [string, unknown]) => [key, typeof v === 'number' ? v * by : v]);
    return Object.fromEntries(entries) as PathCommand;
  });
}

async function faceOf(id: string): Promise<Face> {
  const loaded = await loadFace(id);
  if ('problem' in loaded) throw new Error(loaded.problem);
  return loaded.face;
}
