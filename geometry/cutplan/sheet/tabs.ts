/**
 * Small tabs: metal left across the cut, so that a piece stays in until it is snapped out by hand.
 *
 * How wide and how many follows from kerf, thickness and the size of the piece, unless shop or person say otherwise. Each
 * stands where the run behind it can be led in: straight from the waste, square to the path. A curved lead-in would come
 * from over the tab and cut it off.
 */
import { placeRing } from '../../measure/place.ts';
import type { Placement, Region } from '../../shapes.ts';
import { contourLengthTo, sampleRun, sideLengthMm, type Station, stationAt } from '../contour-walk.ts';
import { runsOf } from '../pass-runs.ts';
import { leadFits } from '../plate/lead-ins.ts';
import { tabRuleFor } from '../tab-rule.ts';
import type { CutPass, CutSettings, Run, Slug, Tab, TabRule } from '../sheet-plan.ts';

/** Tabs of one piece. */
const FEWEST = 2;
const MOST = 8;

/** Where the first of the tabs stands between the start and the next, so that none is at the start. */
const FIRST_SHARE = 0.6;
/** Where else a tab is tried, of the way from one to the next. */
const SHIFTS = [0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3];
/** Of the usual lead-in; the shortest that keeps the pierce off the edge is tried last. */
const SHORTENED = [1, 0.6, 0.35];

/**
 * Tabs for pieces that are to be held, with the passes that got none: too small for tabs, or without room to lead in.
 * insetOf: where the beam's middle may be in the waste of a pass, in the sheet's frame.
 */
export function addTabs(
  passes: readonly CutPass[],
  slugs: readonly Slug[],
  settings: CutSettings,
  insetOf: (pass: CutPass) => Region | undefined,
): { readonly passes: readonly CutPass[]; readonly slugs: readonly Slug[] } {
  const held = new Set(slugs.filter((s) => s.isTabbed).map((s) => s.pass));
  const rule = settings.tab ?? tabRuleFor(settings.kerfMm, 0);
  const tabbed = passes.map((pass) => {
    const inset = held.has(pass.id) ? insetOf(pass) : undefined;
    const tabsMm = inset && placeTabs(pass, rule, settings, inset);
    return tabsMm ? { ...pass, tabsMm } : pass;
  });
  const there = new Set(tabbed.filter((p) => p.tabsMm).map((p) => p.id));
  return {
    passes: tabbed,
    slugs: slugs.map((s) => (s.isTabbed && !there.has(s.pass) ? { ...s, isTabbed: false } : s)),
  };
}

/** The most tabs that find room, two at the least; undefined where not even these do. */
function placeTabs(pass: CutPass, rule: TabRule, settings: CutSettings, inset: Region): Tab[] | undefined {
  const lengthMm = contourLengthTo(pass.path, pass.path.length);
  const wanted = rule.count ?? Math.min(MOST, Math.max(FEWEST, Math.round(lengthMm / rule.everyMm)));
  for (let count = wanted; count >= Math.min(FEWEST, wanted); count--) {
    const tabs = Array.from({ length: count }, (_, i) => placeTab(pass, (i + FIRST_SHARE) / count, 1 / count));
    const found = tabs.flatMap((tab) => (tab ? [tab] : []));
    if (found.length === count && standWhole(pass, found, rule, settings.kerfMm)) return found;
  }
  return undefined;

  function placeTab({ path }: CutPass, share: number, pitch: number): Tab | undefined {
    // The beam's own half width is cut on both sides of where it stops.
    const half = (rule.widthMm + settings.kerfMm) / 2;
    if (2 * half > (pitch * lengthMm) / 2) return undefined;
    for (const shift of SHIFTS) {
      const middle = (share + shift * pitch) * lengthMm;
      const [fromMm, toMm] = [middle - half, middle + half];
      if (fromMm < half || toMm > lengthMm - half) continue;
      const leadIn = leadSquare(stationAlong(path, toMm), settings, inset);
      const tab = leadIn && { fromMm, toMm, leadIn };
      if (tab && standWhole(pass, [tab], rule, settings.kerfMm)) return tab;
    }
    return undefined;
  }
}

/** A beam is looked at in pieces of so much of its width. */
const PIECE_SHARE = 0.25;
/** What must be left beside the middle of a tab, of its width. */
const LEFT_SHARE = 0.3;

/** No run of the pass, lead-ins and far side of a narrow opening included, cuts into its tabs. */
function standWhole(pass: CutPass, tabsMm: readonly Tab[], { widthMm }: TabRule, kerfMm: number): boolean {
  const half = kerfMm / 2;
  const runs = runsOf({ ...pass, tabsMm }).flatMap(({ leadIn, cut, leadOut }) => [leadIn, cut, leadOut]);
  const beam = runs.flatMap((run) => sampleRun(run, PIECE_SHARE * kerfMm));
  return tabsMm.every(({ fromMm, toMm }) => {
    const { at, along } = stationAlong(pass.path, (fromMm + toMm) / 2);
    return [-half, 0, half].every((mm) => {
      const p = { x: at.x - along.y * mm, y: at.y + along.x * mm };
      return beam.every((q) => Math.hypot(p.x - q.x, p.y - q.y) > half + LEFT_SHARE * widthMm);
    });
  });
}

function leadSquare({ at, along }: Station, { leadInMm, kerfMm }: CutSettings, inset: Region): Run | undefined {
  for (const mm of [...SHORTENED.map((share) => share * leadInMm), kerfMm, 0.6 * kerfMm]) {
    if (mm < 0.6 * kerfMm) continue;
    const pierce = { x: at.x - along.y * mm, y: at.y + along.x * mm };
    const run = [
      { ...pierce, bulge: 0 },
      { ...at, bulge: 0 },
    ];
    if (leadFits(run, pierce, inset, kerfMm / 2)) return run;
  }
  return undefined;
}

function stationAlong(path: CutPass['path'], mm: number): Station {
  let before = 0;
  for (let side = 0; side < path.length; side++) {
    const long = sideLengthMm(path[side]!, path[(side + 1) % path.length]!);
    if (before + long >= mm && long > 0) return stationAt(path, side, (mm - before) / long);
    before += long;
  }
  return stationAt(path, path.length - 1, 1);
}

/** A region of a plate in the sheet's frame. */
export function placeRegion({ outer, holes }: Region, at: Placement): Region {
  return { outer: placeRing(outer, at), holes: holes.map((ring) => placeRing(ring, at)) };
}
