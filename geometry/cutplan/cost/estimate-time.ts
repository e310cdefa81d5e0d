import { circleContour } from '../../measure/arc.ts';
import type { Contour } from '../../shapes.ts';
import type { CutPlan } from '../cut-plan.ts';
import { closeRun } from '../contour-walk.ts';
import { timeRun } from './feed.ts';
import { atRapid } from './time-plan.ts';
import type { CutSettings } from '../sheet-plan.ts';

/**
 * Seconds for one plate, before any sheet is planned: each contour and its lead-in from rest to rest; between them
 * straight, raised.
 */
export function estimateSeconds(plan: CutPlan, settings: CutSettings): number {
  let seconds = 0;
  let last: Contour[number] | undefined;
  for (const cut of plan.contours) {
    const contour = cut.kind === 'opening' ? cut.contour : circleContour(cut.diameterMm / 2);
    const [start] = contour;
    if (!start) continue;
    if (last) seconds += timeRun([{ ...last, bulge: 0 }, start], atRapid(settings)).seconds + settings.raiseS;
    seconds += settings.pierceS + (settings.leadInMm / settings.feedMmMin) * 60;
    seconds += timeRun(closeRun(contour), settings).seconds;
    last = start;
  }
  return seconds;
}
