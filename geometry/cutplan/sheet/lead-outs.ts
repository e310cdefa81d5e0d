/**
 * How a cut ends: past its closing point, so that no nib stays where a jet or a torch trails behind, and then off the path
 * into the waste where there is room, so that it does not dwell on the edge.
 */
import type { Region, Vertex } from '../../shapes.ts';
import { contourPart } from '../../measure/contour-part.ts';
import { contourLengthTo, stationAt } from '../contour-walk.ts';
import { leadFits } from '../plate/lead-ins.ts';
import type { CutPass, CutSettings, Run } from '../sheet-plan.ts';

/** Of the lead-in, longest first; common practice, no source. */
const TAIL_SHARES = [0.6, 0.35, 0.2];
/** No overlap is longer than this share of the contour. */
const MOST_SHARE = 0.25;
const QUARTER_BULGE = Math.tan(Math.PI / 8);

/** The passes with their overlaps; as they are where the process wants none. insetOf: as for tabs. */
export function addLeadOuts(
  passes: readonly CutPass[],
  settings: CutSettings,
  insetOf: (pass: CutPass) => Region | undefined,
): readonly CutPass[] {
  const { overlapMm = 0 } = settings;
  if (overlapMm <= 0) return passes;
  return passes.map((pass) => ({ ...pass, leadOut: leadOutOf(pass, overlapMm, settings, insetOf(pass)) }));
}

function leadOutOf({ path }: CutPass, overlapMm: number, settings: CutSettings, inset: Region | undefined): Run {
  const over = contourPart(path, 0, Math.min(overlapMm, MOST_SHARE * contourLengthTo(path, path.length)));
  const tail = inset && tailOf(over, settings, inset);
  if (!tail || over.length === 0) return over;
  const last = over.at(-1)!;
  return [...over.slice(0, -1), { ...last, bulge: tail.bulge }, tail.end];
}

/** A quarter of a circle that leaves the path without a kink, to its left. */
function tailOf(
  over: Run,
  { leadInMm, kerfMm }: CutSettings,
  inset: Region,
): { readonly bulge: number; readonly end: Vertex } | undefined {
  if (over.length < 2) return undefined;
  const { at, along } = stationAt(over, over.length - 2, 1);
  for (const share of TAIL_SHARES) {
    const radius = (leadInMm * share * 2) / Math.PI;
    if (radius < kerfMm / 2) return undefined;
    const end = { x: at.x + (along.x - along.y) * radius, y: at.y + (along.y + along.x) * radius, bulge: 0 };
    const back = [
      { ...end, bulge: -QUARTER_BULGE },
      { ...at, bulge: 0 },
    ];
    if (leadFits(back, end, inset, kerfMm / 2)) return { bulge: QUARTER_BULGE, end };
  }
  return undefined;
}
