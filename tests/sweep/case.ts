import { FACES } from '../../fonts/catalogue.ts';
import { printableLatin1 } from '../../fonts/coverage.ts';
import { loadFace } from '../../fonts/node-faces.ts';
import { createCache } from '../../geometry/cache.ts';
import type { Face } from '../../geometry/adapters/face.ts';
import { union } from '../../geometry/adapters/clipper.ts';
import { judgeGaps } from '../../geometry/checks/gap-findings.ts';
import { proveUnits } from '../../geometry/checks/prove-units.ts';
import { solveUnit } from '../../geometry/bridges/solve-unit.ts';
import type { SolvedUnit } from '../../geometry/bridges/solved-unit.ts';
import type { Manner, Stock } from '../../geometry/design/schema.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { placeRegions, placeRing } from '../../geometry/measure/place.ts';
import type { Outline, PathCommand, Region } from '../../geometry/shapes.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { FLATTEN_ERROR_MM } from '../../geometry/units.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { areaOf, metalAround } from '../judge/metal.ts';
import { sliversBeside } from './slivers.ts';

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
  /**
   * held: one piece, shrunk too, and whichever one bar is lost; no neck, no sliver. told: not so, and the maker says
   * so. silent: not so, and nobody says it.
   */
  readonly outcome: 'held' | 'told' | 'silent';
  readonly fault: Fault | undefined;
  readonly drawn: readonly Region[];
  readonly solved: SolvedUnit;
}

/** What JTS finds wrong. */
export interface Fault {
  readonly kind: 'pieces' | 'shrunk' | 'one-bar-lost' | 'neck' | 'sliver' | 'swallowed' | 'unjudged';
  readonly why: string;
}

export async function runCase(one: SweepCase, manner: Manner = 'hidden'): Promise<SweepResult> {
  const face = await faceOf(one.face);
  return judgeDrawing(drawnOnce(face, one), one.stock, manner);
}

/** Bridges a drawing and has JTS judge it. */
export function judgeDrawing(drawn: readonly Region[], stock: Stock, manner: Manner): SweepResult {
  const { rules } = stockRules(stock, 'auto', BUILT_IN);
  const solved = solveUnit(drawn, rules, manner);
  const fault = judged(drawn, solved, rules);
  const outcome = !fault ? 'held' : told(fault, solved, rules) ? 'told' : 'silent';
  return { outcome, fault, drawn, solved };
}

let lastDrawn: { readonly key: string; readonly drawn: Region[] } | undefined;

/** Cases of one letter at one height follow each other. */
function drawnOnce(face: Face, { face: id, char, capMm }: SweepCase): Region[] {
  const key = `${id} ${char} ${capMm}`;
  if (lastDrawn?.key !== key) lastDrawn = { key, drawn: drawnLetter(face, char, capMm) };
  return lastDrawn.drawn;
}

/** A little under the rule itself: what grid, flattening and the judge's own round corners may come to. */
const SHRINK_SHARE = 0.98;

/** JTS now and then cannot make out how edges run that nearly meet: turned so far, in degrees, it can. */
const TURNS_DEG = [0, 0.37, 11.3];

/** What JTS finds wrong, or nothing; what it cannot judge in any position counts as wrong. */
function judged(drawn: readonly Region[], solved: SolvedUnit, rules: StockRules): Fault | undefined {
  let why = '';
  for (const turnDeg of TURNS_DEG) {
    try {
      return turnDeg === 0 ? faultOf(drawn, solved, rules) : faultOf(...turned(drawn, solved, turnDeg), rules);
    } catch (error) {
      why = String(error);
    }
  }
  return { kind: 'unjudged', why };
}

function turned(drawn: readonly Region[], solved: SolvedUnit, turnDeg: number): [Region[], SolvedUnit] {
  const at = { x: 0, y: 0, turnDeg };
  const bars = solved.bars.map((bar) => ({ ...bar, outline: placeRing(bar.outline, at) }));
  return [placeRegions(drawn, at), { ...solved, openings: placeRegions(solved.openings, at), bars }];
}

/** What JTS finds wrong with the metal, or nothing. */
function faultOf(drawn: readonly Region[], solved: SolvedUnit, rules: StockRules): Fault | undefined {
  if (solved.openings.length === 0) return { kind: 'swallowed', why: 'nothing is left to cut' };
  const metal = metalAround(solved.openings, 2 * rules.leastBridgeMm, drawn);
  if (metal.pieces !== 1) return { kind: 'pieces', why: `${metal.pieces} pieces` };
  const shrunk = metal.shrunk((SHRINK_SHARE * rules.leastBridgeMm) / 2);
  if (shrunk.pieces !== 1) return { kind: 'shrunk', why: `${shrunk.pieces} pieces when shrunk` };
  const outlines = solved.bars.map((bar) => bar.outline);
  const parted = metal.partedWithout(outlines, drawn);
  if (parted !== undefined) return { kind: 'one-bar-lost', why: `more than one piece without bar ${parted}` };
  // The shrunk metal is one piece, so each opening that grows into another has lost one neck between them (Euler).
  const alike = rules.leastWebMm === rules.leastBridgeMm;
  const grown = alike ? shrunk : metal.shrunk((SHRINK_SHARE * rules.leastWebMm) / 2);
  const necks = metal.openings - grown.openings;
  if (necks > 0) return { kind: 'neck', why: `${necks} necks under ${rules.leastWebMm} mm` };
  const slivers = sliversBeside(areaOf(drawn), areaOf(solved.openings), outlines, rules.kerfMm);
  if (slivers.length > 0)
    return { kind: 'sliver', why: `slivers of ${slivers.map((a) => a.toFixed(3)).join(', ')} mm2` };
  return undefined;
}

/** Whether the maker or the plate's own checks say this very thing. */
function told(fault: Fault, solved: SolvedUnit, rules: StockRules): boolean {
  if (solved.lostParts.length > 0 || solved.covered >= SWALLOWED) return true;
  if (['swallowed', 'sliver', 'unjudged'].includes(fault.kind)) return false;
  if (fault.kind === 'one-bar-lost') return solved.loose.length > 0 || solved.once.length > 0;
  // The letter alone in the middle of a plate.
  const farthest = Math.max(...solved.openings.flatMap((o) => o.outer.map((p) => Math.hypot(p.x, p.y))));
  const unit = { key: '', frame: { x: 0, y: 0, turnDeg: 0 }, solved, firstOpening: 0 };
  const regions = solved.openings;
  const proof = proveUnits([unit], regions, 2 * farthest + 8 * rules.leastBridgeMm, rules, createCache(1000));
  if (fault.kind !== 'neck') return solved.loose.length > 0 || proof.loose.length > 0;
  const openings = regions.map((region, i) => ({ id: `${i}`, elementIds: [], word: '', region }));
  return judgeGaps(proof, openings, rules).findings.some(({ code }) => NECK_CODES.includes(code));
}

const NECK_CODES = ['web-too-thin', 'bridge-too-thin'];

export function drawnLetter(face: Face, char: string, capMm: number): Region[] {
  const outline = face.glyph(char)?.outline ?? [];
  return union(flattenOutline(scaled(outline, capMm / face.capHeight), FLATTEN_ERROR_MM));
}

export function scaled(outline: Outline, by: number): Outline {
  return outline.map((c) => {
    const entries = Object.entries(c).map(([key, v]: [string, unknown]) => [key, typeof v === 'number' ? v * by : v]);
    return Object.fromEntries(entries) as PathCommand;
  });
}

export async function faceOf(id: string): Promise<Face> {
  const loaded = await loadFace(id);
  if ('problem' in loaded) throw new Error(loaded.problem);
  return loaded.face;
}
