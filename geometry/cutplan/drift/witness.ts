/**
 * Witness marks: where the sheet shows whether it moved while a plate was cut.
 *
 * A small circle is cut in the skeleton beside the plate before anything else of it, a larger one around the same place
 * when the plate (or a stage of it) is done. What keeps its place leaves two circles about one centre; a sheet that
 * moved shows it at once, and how far: judge-drift.ts. Two marks far apart show a turn as well.
 *
 * In: a sheet with its plates, and what has to stay free. Out: marks, and a finding for each plate that finds no room
 * for two. Not promised: that marks lie at the best places, only that none comes nearer to a rim, the sheet's edge, a
 * lost part of a remnant or another mark than the web's rule, the rims' lead-ins counted.
 */
import type { Finding } from '../../findings.ts';
import type { Circle, NestedSheet, PlacedPlate } from '../../sheet/sheets.ts';
import type { Point } from '../../shapes.ts';
import { CUT_EN } from '../../sentences/cut-en.ts';

export interface WitnessMark {
  /** `wish#3/witness1`. */
  readonly id: string;
  readonly plate: string;
  /** Middle of both circles, in the sheet's frame. */
  readonly at: Point;
  readonly innerMm: number;
  readonly outerMm: number;
  /** The larger circle is cut when this stage of the plate is done, counted from 1; the last is the plate's end. */
  readonly stage: number;
}

export interface WitnessWishes {
  readonly kerfMm: number;
  /** Least metal that stays between two cuts. */
  readonly leastWebMm: number;
  readonly leastOpeningMm: number;
  /** From the rim out to where it is pierced. */
  readonly leadInMm: number;
  /** Kept free along the edge of the sheet. */
  readonly edgeMm: number;
  /** Stages a plate is cut in, each with marks of its own: 1 says only whether the sheet moved, more say when. */
  readonly stages?: number;
  /** Marks for each stage; 2 show a turn. */
  readonly marks?: number;
  /** Round waste in the sheet's frame, with the plate it is cut from: marks of plates that lie in it go there. */
  readonly waste?: readonly (Circle & { readonly plate: string })[];
}

/** A circle that a pin or a caliper's jaw goes into; common practice, no source. */
const SMALL_MM = 4;
/** The ring between the circles: so wide that it can be measured on four sides; common practice, no source. */
const RING_MM = 3;

/** Where marks are looked for: so many directions, and so many distances up to this share of the plate's radius. */
const DIRECTIONS = 72;
const DISTANCES = 12;
const FARTHEST_SHARE = 0.45;

export function placeWitness(
  sheet: NestedSheet,
  wishes: WitnessWishes,
): { readonly marks: readonly WitnessMark[]; readonly findings: readonly Finding[] } {
  const innerMm = Math.max(SMALL_MM, wishes.leastOpeningMm);
  const outerMm = innerMm + 2 * Math.max(RING_MM, wishes.leastWebMm + wishes.kerfMm);
  const marks: WitnessMark[] = [];
  const findings: Finding[] = [];
  const { stages = 1, marks: each = 2 } = wishes;
  for (const plate of sheet.plates) {
    const free = sitesOf(plate, sheet, wishes, outerMm / 2);
    const own: WitnessMark[] = [];
    // The last stage judges the whole plate, so it chooses first.
    for (let stage = stages; stage >= 1; stage--) {
      for (const at of chooseApart(free, each, marks, outerMm + wishes.leastWebMm, plate, stage)) {
        const mark = { id: `${plate.id}/witness${own.length + 1}`, plate: plate.id, at, innerMm, outerMm, stage };
        own.push(mark);
        marks.push(mark);
      }
    }
    const least = Math.min(...Array.from({ length: stages }, (_, s) => own.filter((m) => m.stage === s + 1).length));
    if (least < Math.min(2, each)) findings.push(noRoom(plate, own.length));
  }
  return { marks, findings };
}

/** Free places around a plate, nearest first. */
function sitesOf(plate: PlacedPlate, sheet: NestedSheet, wishes: WitnessWishes, outerRadius: number): Point[] {
  const clear = outerRadius + wishes.leastWebMm + wishes.kerfMm + wishes.leadInMm;
  const radius = plate.diameterMm / 2;
  const reach = radius * (1 + FARTHEST_SHARE) + 2 * clear;
  const host = wishes.waste?.filter((w) => w.plate === plate.inside) ?? [];
  const solid: readonly Circle[] = [
    ...sheet.plates
      .filter((p) => p.id !== plate.inside || host.length === 0)
      .map((p) => ({ x: p.x, y: p.y, radiusMm: p.diameterMm / 2 })),
    ...sheet.gone,
  ].filter((c) => Math.hypot(c.x - plate.x, c.y - plate.y) < c.radiusMm + reach);
  const edge = outerRadius + Math.max(wishes.edgeMm, wishes.leastWebMm);
  const isFree = (p: Point) =>
    p.x >= edge &&
    p.y >= edge &&
    p.x <= sheet.widthMm - edge &&
    p.y <= sheet.heightMm - edge &&
    solid.every((c) => Math.hypot(c.x - p.x, c.y - p.y) >= c.radiusMm + clear) &&
    (host.length === 0 || host.some((w) => Math.hypot(w.x - p.x, w.y - p.y) <= w.radiusMm - clear));
  const sites: Point[] = [];
  for (let d = 0; d < DISTANCES; d++) {
    const far = radius + clear + (d / (DISTANCES - 1)) * FARTHEST_SHARE * radius;
    for (let k = 0; k < DIRECTIONS; k++) {
      const rad = (2 * Math.PI * k) / DIRECTIONS;
      const p = { x: plate.x + far * Math.cos(rad), y: plate.y + far * Math.sin(rad) };
      if (isFree(p)) sites.push(p);
    }
  }
  return sites;
}

/** So many of the sites, each as far from those before it as there is room; stages begin in different directions. */
function chooseApart(
  sites: readonly Point[],
  count: number,
  taken: readonly WitnessMark[],
  apartMm: number,
  plate: PlacedPlate,
  stage: number,
): Point[] {
  const chosen: Point[] = [];
  const near = taken.filter((m) => Math.hypot(m.at.x - plate.x, m.at.y - plate.y) < 2 * plate.diameterMm + apartMm);
  const isFree = (p: Point) =>
    near.every((m) => gap(m.at, p) >= apartMm) && chosen.every((other) => gap(other, p) >= apartMm);
  const rad = Math.PI * (0.25 + 0.37 * (stage - 1));
  const ahead = { x: plate.x + Math.cos(rad) * plate.diameterMm, y: plate.y + Math.sin(rad) * plate.diameterMm };
  for (let i = 0; i < count; i++) {
    const worth = (p: Point) => (i === 0 ? -gap(ahead, p) : Math.min(...chosen.map((other) => gap(other, p))));
    const best = bestOf(sites.filter(isFree), worth);
    if (!best) break;
    chosen.push(best);
  }
  return chosen;
}

/** The first of those worth most. */
function bestOf(sites: readonly Point[], worth: (p: Point) => number): Point | undefined {
  let best: Point | undefined;
  let most = -Infinity;
  for (const site of sites) {
    const value = worth(site);
    if (value > most) [best, most] = [site, value];
  }
  return best;
}

function gap(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function noRoom(plate: PlacedPlate, found: number): Finding {
  return {
    code: 'no-room-for-witness',
    severity: 'look',
    place: { kind: 'point', at: { x: plate.x, y: plate.y }, radiusMm: plate.diameterMm / 2 },
    elementIds: [],
    ...(found === 0
      ? CUT_EN.said('drift.noWitness', { plate: plate.id })
      : CUT_EN.said('drift.fewWitnesses', { plate: plate.id })),
  };
}
