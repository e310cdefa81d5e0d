/**
 * What the machine does for one sheet.
 *
 * In: plates in their places, the cuts of each kind of plate (planCuts), how the process cuts, and wishes. Out: passes
 * in order, each with its path, pierce and lead-in; the ways between; what becomes of the pieces; what could not be done
 * as wished. The same input gives the same plan. Promised, and checked by another library (tests/judge/): insides before
 * their outside, a word finished before the next, a plate's rim last; lead-ins only through waste; no way at cutting
 * height over a piece that may stand. Not promised: the shortest way.
 *
 * 1. Each kind of plate once: kerf, lead-ins, a round trip through its openings (prepare-plate.ts).
 * 2. Lead-ins to rims, among the neighbours.
 * 3. The plates one after another (visit-plates.ts).
 * 4. Passes in the sheet's frame; witness marks where they belong.
 * 5. Chances of the pieces; the ways between, around those that may stand.
 */
import { contourToRing } from '../../measure/arc.ts';
import { placeRing } from '../../measure/place.ts';
import { ringHolds } from '../../measure/ring.ts';
import type { NestedSheet, PlacedPlate } from '../../sheet/sheets.ts';
import type { Point, Region, Ring } from '../../shapes.ts';
import { placeVertices } from '../contour-walk.ts';
import type { CutPlan } from '../cut-plan.ts';
import { startPathAt, type Lead } from '../plate/lead-ins.ts';
import { linkPasses } from './link-passes.ts';
import type { Round } from './cool-round.ts';
import { planRounds, type PreparedPlate, preparePlate } from './prepare-plate.ts';
import { keepLeadsClear, findRimLeads } from './rim-leads.ts';
import type { CutPass, CutSettings, SheetPlan } from '../sheet-plan.ts';
import { writeNotes } from './plan-notes.ts';
import { judgeSlugs } from './plate-slugs.ts';
import { addLeadOuts } from './lead-outs.ts';
import { addTabs, placeRegion } from './tabs.ts';
import { chooseBestLead, listVisitOptions, wordOf } from './visit-options.ts';
import { type ChosenVisit, type Visit, visitPlates } from './visit-plates.ts';
import type { WitnessMark } from '../drift/witness.ts';
import { addWitness } from '../drift/witness-passes.ts';
import type { PreparedPass } from './prepared-opening.ts';
import { NEARNESS_ERROR_MM } from '../../units.ts';

export interface SheetWishes {
  readonly marks?: readonly WitnessMark[];
  /** Pieces likelier to tip than the limit are held by two small tabs. */
  readonly tabs?: boolean;
  /** Held by tabs whatever their chances, by their passes; a rim never. */
  readonly held?: ReadonlySet<string>;
  /** Words (CutPass.word) that are cut after all others of their plate. */
  readonly last?: ReadonlySet<string>;
  /** Share by which the ways between openings may grow so that hot spots are come back to later; usual: 0.04. */
  readonly extraForHeat?: number;
}

/** Throws RangeError when a plate's wish has no cut plan. */
export function planSheet(
  sheet: NestedSheet,
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
  wishes: SheetWishes = {},
): SheetPlan {
  const marks = wishes.marks ?? [];
  const placed = sheet.plates.map((plate) => placePreparation(plate, plans, settings, wishes.extraForHeat));
  const byId = new Map(placed.map((p) => [p.plate.id, p]));
  for (const p of placed) {
    const host = p.plate.inside === undefined ? undefined : byId.get(p.plate.inside);
    if (host) lieInside(p, host);
  }
  for (const host of placed) keepOffGuests(host, settings.kerfMm);
  const circles = marks.map((m) => ({ ...m.at, radiusMm: m.outerMm / 2 }));
  for (const p of placed)
    p.rims = findRimLeads(p.plate, p.prepared, { sheet, marks: circles, around: p.around }, settings);

  const chosen = visitPlates(placed.map((p) => visitOf(p, wishes.last ?? NONE)));
  const ordered = chosen.flatMap((c) => passesOf(c, byId.get(c.visit.plate.id)!));
  const wished = judgeSlugs(sheet.plates, plans, settings, { all: wishes.tabs === true, held: wishes.held ?? NONE });
  const wasteOf = (pass: CutPass) => insetOf(pass, byId.get(pass.plate)!);
  const held = addTabs(addLeadOuts(ordered, settings, wasteOf), wished, settings, wasteOf);
  const { slugs } = held;
  const passes = addWitness(held.passes, marks, settings);
  const { rapids, cuttingMm, rapidMm } = linkPasses(passes, slugs, settings);
  const notes = placed.flatMap((p) => writeNotes(p.plate, p.prepared, tightOf(chosen, p)));
  return { widthMm: sheet.widthMm, heightMm: sheet.heightMm, passes, rapids, cuttingMm, rapidMm, slugs, notes };
}

/** A plate's work in its place; what lies in it, and what it lies in, is filled in while the sheet is put together. */
interface PlacedPreparation {
  readonly plate: PlacedPlate;
  readonly prepared: PreparedPlate;
  readonly rounds: readonly Round[];
  /** For each round the lead of each opening's outer pass. */
  readonly leads: readonly Lead[][];
  rims: readonly Lead[];
  /** True edge, in the sheet's frame, of the opening it lies in. */
  around?: Ring;
  /** Plates that lie in an opening of this one, by the opening's number. */
  readonly guests: Map<number, PlacedPlate[]>;
}

function placePreparation(
  plate: PlacedPlate,
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
  extraForHeat: number | undefined,
): PlacedPreparation {
  const plan = plans.get(plate.wish);
  if (!plan) throw new RangeError(`there is no cut plan for ${plate.wish}`);
  const prepared = preparePlate(plan, settings);
  const rounds = planRounds(prepared, settings, extraForHeat);
  const leads = rounds.map(({ taken }) => prepared.openings.map((o, i) => o.outer.leads[taken[i]!]!));
  return { plate, prepared, rounds, leads, rims: [], guests: new Map() };
}

function lieInside(guest: PlacedPreparation, host: PlacedPreparation): void {
  host.prepared.openings.forEach((opening, i) => {
    const ring = placeRing(contourToRing(opening.outer.net, NEARNESS_ERROR_MM), host.plate);
    if (!ringHolds(ring, guest.plate)) return;
    guest.around = ring;
    host.guests.set(i, [...(host.guests.get(i) ?? []), guest.plate]);
  });
}

function keepOffGuests(host: PlacedPreparation, kerfMm: number): void {
  for (const [i, guests] of host.guests) {
    const opening = host.prepared.openings[i]!;
    const ring = placeRing(contourToRing(opening.outer.net, NEARNESS_ERROR_MM), host.plate);
    const clear = keepLeadsClear(opening.outer.leads, ring, host.plate, guests, kerfMm);
    for (const leads of host.leads) if (!clear.includes(leads[i]!)) leads[i] = clear[0]!;
  }
}

const NONE: ReadonlySet<string> = new Set();

function visitOf(p: PlacedPreparation, last: ReadonlySet<string>): Visit {
  const place = (point: Point): Point => placeRing([point], p.plate)[0]!;
  const rims = p.rims.map((l) => ({ pierce: place(l.pierce), at: place(l.start.at) }));
  return { plate: p.plate, options: p.rounds.flatMap((_, round) => listVisitOptions(p, round, place, last)), rims };
}

function passesOf({ option, rim }: ChosenVisit, p: PlacedPreparation): CutPass[] {
  const { plate, prepared } = p;
  const passes: CutPass[] = [];
  for (const o of option?.sequence ?? []) {
    const opening = prepared.openings[o]!;
    const word = wordOf(opening);
    const inner = opening.inner.map((pass) => passOf(p, pass, chooseBestLead(pass), 'opening', word, []));
    const guests = (p.guests.get(o) ?? []).map((g) => `${g.id}/rim`);
    const after = [...inner.map((i) => i.id), ...guests];
    passes.push(...inner, passOf(p, opening.outer, p.leads[option!.round]![o]!, 'opening', word, after));
  }
  const rimPass = { ...prepared.kerf.rim, leads: p.rims, lengthMm: 0 };
  const all = passes.map((pass) => pass.id);
  return [...passes, { ...passOf(p, rimPass, p.rims[rim]!, 'rim', 'rim', all), plate: plate.id }];
}

function passOf(
  { plate }: PlacedPreparation,
  pass: PreparedPass,
  lead: Lead,
  kind: 'opening' | 'rim',
  word: string,
  after: readonly string[],
): CutPass {
  return {
    id: `${plate.id}/${pass.id}`,
    kind,
    plate: plate.id,
    word: `${plate.id}/${word}`,
    net: placeVertices(pass.net, plate),
    path: placeVertices(startPathAt(pass.path, lead), plate),
    pierce: placeRing([lead.pierce], plate)[0]!,
    leadIn: placeVertices(lead.run, plate),
    after,
  };
}

/** Where the beam's middle may be in the waste of an opening's pass. */
function insetOf(pass: CutPass, { plate, prepared }: PlacedPreparation): Region | undefined {
  const id = pass.id.slice(plate.id.length + 1);
  const opening = prepared.openings.find((o) => o.id === id || o.inner.some((inner) => inner.id === id));
  return opening && placeRegion(opening.inset, plate);
}

/** Leads taken that had too little room, with the contour they belong to. */
function tightOf(chosen: readonly ChosenVisit[], p: PlacedPreparation): { contour: string; at: Point }[] {
  const own = chosen.find((c) => c.visit.plate === p.plate);
  const leads = p.leads[own?.option?.round ?? 0]!;
  const taken: (readonly [string, Lead])[] = [
    ...p.prepared.openings.flatMap((o, i) => [
      ...o.inner.map((pass) => [pass.id, chooseBestLead(pass)] as const),
      [o.id, leads[i]!] as const,
    ]),
    ['rim', p.rims[own?.rim ?? 0]!],
  ];
  return taken.flatMap(([contour, lead]) => (lead.isTight ? [{ contour, at: lead.pierce }] : []));
}
