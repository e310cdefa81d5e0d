import { contourLengthMm } from '../measure/arc.ts';
import { contourPart } from '../measure/contour-part.ts';
import type { Vertex } from '../shapes.ts';
import type { CutPass, Run } from './sheet-plan.ts';

/** What the head cuts in one go: pierced where the lead-in begins, or on the path where there is none. */
export interface PassRun {
  readonly leadIn: Run;
  readonly cut: readonly Vertex[];
  /** The whole contour, back to where it began. */
  readonly closed: boolean;
  readonly leadOut: Run;
}

/** The runs of a pass, in order from its beginning: one, or as many as its tabs part it into. */
export function runsOf({ path, leadIn, leadOut = [], tabsMm = [] }: CutPass): PassRun[] {
  if (tabsMm.length === 0) return [{ leadIn, cut: path, closed: true, leadOut }];
  const tabs = [...tabsMm].sort((a, b) => a.fromMm - b.fromMm);
  const ends = [...tabs.map((t) => t.fromMm), contourLengthMm(path)];
  const runs = ends.map((end, i): PassRun => {
    const before = tabs[i - 1];
    return {
      leadIn: before ? before.leadIn : leadIn,
      cut: contourPart(path, before?.toMm ?? 0, end),
      closed: false,
      leadOut: i === tabs.length ? leadOut : [],
    };
  });
  return runs.filter(({ cut }) => cut.length > 1);
}
