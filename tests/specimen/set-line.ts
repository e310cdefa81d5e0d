import { loadFace } from '../../fonts/node-faces.ts';
import { motifById } from '../../geometry/motifs/catalogue.ts';
import { solveUnit } from '../../geometry/bridges/solve-unit.ts';
import type { BuiltBar, SolvedUnit } from '../../geometry/bridges/solved-unit.ts';
import type { Manner } from '../../geometry/design/schema.ts';
import { layLineText } from '../../geometry/layout/line-text.ts';
import { placeRegions, placeRing } from '../../geometry/measure/place.ts';
import { gatherUnits } from '../../geometry/openings/gather-units.ts';
import { createOutlineStore, type OutlineStore } from '../../geometry/openings/outline-store.ts';
import type { Region } from '../../geometry/shapes.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';

/** A line of text as the tool sets and bridges it: mm, y up, capitals centred on y = 0, ink centred on x = 0. */
export interface SetLine {
  readonly drawn: readonly Region[];
  readonly openings: readonly Region[];
  readonly bars: readonly BuiltBar['outline'][];
}

/** Any radius serves: the line's size is given in mm, and nothing here looks at the rim. */
const RADIUS_MM = 1000;

/** Outlines and solved units of lines set before, for one stock and manner. */
export interface LineStore {
  readonly outlines: OutlineStore;
  readonly solved: Map<string, SolvedUnit>;
}

export function lineStore(): LineStore {
  return { outlines: createOutlineStore(10_000), solved: new Map() };
}

export async function setLine(
  faceId: string,
  text: string,
  capMm: number,
  rules: StockRules,
  manner: Manner,
  store: LineStore,
): Promise<SetLine> {
  const loaded = await loadFace(faceId);
  if ('problem' in loaded) throw new Error(loaded.problem);
  const { face } = loaded;
  const layout = layLineText(
    {
      kind: 'lineText',
      id: 'line',
      text,
      face: faceId,
      x: 0,
      y: 0,
      capHeight: capMm / RADIUS_MM,
      turnDeg: 0,
      tracking: 0.02,
      fit: 'natural',
    },
    RADIUS_MM,
    rules,
    { get: () => face, motif: motifById },
  );
  const units = gatherUnits(layout, rules.leastBridgeMm, store.outlines);
  const { solved } = store;
  for (const unit of units) {
    if (!solved.has(unit.key)) solved.set(unit.key, solveUnit(unit.regions, rules, manner));
  }
  return {
    drawn: units.flatMap((unit) => placeRegions(unit.regions, unit.frame)),
    openings: units.flatMap((unit) => placeRegions(solved.get(unit.key)!.openings, unit.frame)),
    bars: units.flatMap((unit) => solved.get(unit.key)!.bars.map((bar) => placeRing(bar.outline, unit.frame))),
  };
}

/** Data of an SVG path, y down. */
export function pathData(regions: readonly Region[], decimals = 2): string {
  return regions
    .flatMap((r) => [r.outer, ...r.holes])
    .map((ring) => `M${ring.map((p) => `${short(p.x, decimals)} ${short(-p.y, decimals)}`).join('L')}Z`)
    .join('');
}

function short(v: number, decimals: number): string {
  return `${Number(v.toFixed(decimals))}`;
}
