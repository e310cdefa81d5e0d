import type { TabRule } from './sheet-plan.ts';

/** Common practice, no source: half the thickness snaps by hand; no thinner than what a wandering kerf leaves. */
const THICKNESS_SHARE = 0.5;
const KERF_SHARE = 0.75;
const LEAST_TAB_MM = 0.4;
/** A tab for so much of a piece's edge; common practice, no source. */
const EVERY_MM = 250;

/** Tabs for a kerf and a thickness (0: not known), mm. */
export function tabRuleFor(kerfMm: number, thicknessMm: number): TabRule {
  const widthMm = Math.max(LEAST_TAB_MM, THICKNESS_SHARE * thicknessMm, KERF_SHARE * kerfMm);
  return { widthMm: Math.round(widthMm * 100) / 100, everyMm: EVERY_MM };
}
