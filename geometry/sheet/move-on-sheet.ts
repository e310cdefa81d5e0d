import { checkSheet, type NestFault } from './check-nest.ts';
import { createDiscGrid, isFree, findTouching, findCorners, findNear } from './disc-grid.ts';
import { turnPoint } from '../measure/clock.ts';
import { wasteInPlace } from './place-waste.ts';
import {
  apart,
  discOf,
  isRound,
  containerOfSheet,
  containerOfWaste,
  widestIn,
  type Disc,
  type Container,
} from './container.ts';
import { usedShare } from './sheet-use.ts';
import type { NestedSheet, NestGaps, PlacedPlate, PlateWish } from './sheets.ts';

/** What the hand's changes are held against. */
export interface ByHand {
  readonly wishes: readonly PlateWish[];
  readonly gaps: NestGaps;
}

/** Sheets after a plate was moved, and what is wrong with the sheet it is on now: nothing, unless it lies too near. */
export interface MovedPlate {
  readonly sheets: readonly NestedSheet[];
  readonly faults: readonly NestFault[];
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * Moves a plate, with all that lies inside it, to a place on sheet number `to` of the list, and locks it. With `slide` it
 * comes to rest at the nearest place where nothing is too near, so that it slides along its neighbours; where there is
 * none within its own diameter, and without `slide`, it lies where the hand put it and the faults say what is wrong. A
 * plate laid wholly into the waste of a larger one belongs to that from then on.
 */
export function moveOnSheets(
  sheets: readonly NestedSheet[],
  id: string,
  to: number,
  at: Point,
  { wishes, gaps }: ByHand,
  slide = true,
): MovedPlate {
  const from = sheets.findIndex(({ plates }) => plates.some((plate) => plate.id === id));
  const plate = sheets[from]?.plates.find((one) => one.id === id);
  const target = sheets[to];
  if (!plate || !target) return { sheets, faults: [] };
  const own = withInside(sheets[from]!.plates, id);
  const others = target.plates.filter((one) => !own.has(one.id));
  const rest = restingPlace(plate, at, { ...target, plates: others }, { wishes, gaps }, slide);
  const shift = (one: PlacedPlate): PlacedPlate => {
    const shifted = { ...one, x: one.x + rest.x - plate.x, y: one.y + rest.y - plate.y };
    return one === plate ? layPlate(shifted, rest.inside) : shifted;
  };
  const coming = sheets[from]!.plates.filter((one) => own.has(one.id)).map(shift);
  const changed = sheets.map((sheet, i) => {
    if (i !== from && i !== to) return sheet;
    // on its own sheet it keeps its place in the list
    if (from === to)
      return withPlates(
        sheet,
        sheet.plates.map((one) => (own.has(one.id) ? shift(one) : one)),
        wishes,
      );
    const others = sheet.plates.filter((one) => !own.has(one.id));
    return withPlates(sheet, i === to ? [...others, ...coming] : others, wishes);
  });
  return {
    sheets: changed,
    faults: checkSheet(changed[to]!, wishes, gaps).filter((f) => f.plates.some((p) => own.has(p))),
  };
}

/** Turns a plate to an angle, clockwise, in degrees; what lies in its waste goes round with it. It is locked then. */
export function turnOnSheets(
  sheets: readonly NestedSheet[],
  id: string,
  turnDeg: number,
  wishes: readonly PlateWish[],
): readonly NestedSheet[] {
  return sheets.map((sheet) => {
    const plate = sheet.plates.find((one) => one.id === id);
    if (!plate) return sheet;
    const own = withInside(sheet.plates, id);
    const by = turnDeg - plate.turnDeg;
    const plates = sheet.plates.map((one) => {
      if (one === plate) return { ...one, turnDeg: roundTurn(turnDeg), locked: true };
      if (!own.has(one.id)) return one;
      const { x, y } = turnPoint({ x: one.x - plate.x, y: one.y - plate.y }, by);
      return { ...one, x: plate.x + x, y: plate.y + y, turnDeg: roundTurn(one.turnDeg + by) };
    });
    return withPlates(sheet, plates, wishes);
  });
}

/** Locks a plate where it lies, or gives it back to the tool. */
export function lockOnSheets(sheets: readonly NestedSheet[], id: string, locked: boolean): readonly NestedSheet[] {
  return sheets.map((sheet) =>
    sheet.plates.some((one) => one.id === id)
      ? { ...sheet, plates: sheet.plates.map((one) => (one.id === id ? { ...one, locked } : one)) }
      : sheet,
  );
}

/** A container a plate may lie in: the sheet itself, or the waste of a plate. */
interface Choice {
  readonly container: Container;
  readonly discs: readonly Disc[];
  readonly inside?: string;
}

function restingPlace(
  plate: PlacedPlate,
  at: Point,
  sheet: NestedSheet,
  { wishes, gaps }: ByHand,
  slide: boolean,
): Point & { readonly inside?: string } {
  const r = (plate.diameterMm + gaps.betweenMm) / 2;
  const choices = choicesOn(sheet, { wishes, gaps }).filter(({ container }) => widestIn(container) >= r);
  let best: { place: Point & { readonly inside?: string }; away: number } | undefined;
  for (const { container, discs, inside } of choices) {
    const found = slide ? nearestFree(container, discs, { ...at, r }) : freeHere(container, discs, { ...at, r });
    if (!found) continue;
    const away = Math.hypot(found.x - at.x, found.y - at.y);
    if (away <= plate.diameterMm && (!best || away < best.away)) {
      best = { place: { ...found, ...(inside === undefined ? {} : { inside }) }, away };
    }
  }
  return best?.place ?? at;
}

function choicesOn(sheet: NestedSheet, { wishes, gaps }: ByHand): readonly Choice[] {
  const discs = (plates: readonly PlacedPlate[]) =>
    plates.map(({ x, y, diameterMm }) => discOf({ x, y, radiusMm: diameterMm / 2 }, gaps));
  const outside = sheet.plates.filter(({ inside }) => inside === undefined);
  const gone = sheet.gone.map((circle) => discOf(circle, gaps));
  const wastes = sheet.plates.flatMap((outer) =>
    (wishes.find(({ id }) => id === outer.wish)?.waste ?? []).map((waste) => ({
      container: containerOfWaste(wasteInPlace(waste, outer), gaps),
      discs: discs(sheet.plates.filter(({ inside }) => inside === outer.id)),
      inside: outer.id,
    })),
  );
  return [{ container: containerOfSheet(sheet, gaps), discs: [...gone, ...discs(outside)] }, ...wastes];
}

function freeHere(container: Container, discs: readonly Disc[], disc: Disc): Point | undefined {
  return isFree(createDiscGrid(container, discs), disc) ? { x: disc.x, y: disc.y } : undefined;
}

/**
 * The nearest free place to the disc's own. It is there, or where the disc touches one neighbour or wall straight in the
 * way, or where it touches two: the nearest point of a region bounded by lines and arcs lies on one of them or where two
 * meet.
 */
function nearestFree(container: Container, discs: readonly Disc[], disc: Disc): Point | undefined {
  const { r } = disc;
  const grid = createDiscGrid(container, discs);
  const here = heldIn(container, disc);
  const reach = findNear(grid, disc.x, disc.y, 5 * r);
  const places: Point[] = [disc, here, ...findCorners(container, r)];
  for (const [i, other] of reach.entries()) {
    const d = Math.hypot(disc.x - other.x, disc.y - other.y);
    const [ux, uy] = d > 0 ? [(disc.x - other.x) / d, (disc.y - other.y) / d] : [1, 0];
    places.push({ x: other.x + ux * (other.r + r), y: other.y + uy * (other.r + r) });
    places.push(
      ...findTouching(
        container,
        r,
        other,
        reach.slice(i + 1).filter((one) => !apart({ ...one, r: one.r + 2 * r }, other)),
      ),
    );
  }
  const far = (p: Point) => Math.hypot(p.x - disc.x, p.y - disc.y);
  return places.sort((a, b) => far(a) - far(b)).find(({ x, y }) => isFree(grid, { x, y, r }));
}

/** The point nearest to the disc's centre at which the walls leave it space. */
function heldIn(container: Container, { x, y, r }: Disc): Point {
  if (!isRound(container)) {
    const between = (value: number, low: number, high: number) => Math.min(Math.max(value, low), Math.max(low, high));
    return {
      x: between(x, container.minX + r, container.maxX - r),
      y: between(y, container.minY + r, container.maxY - r),
    };
  }
  const d = Math.hypot(x - container.x, y - container.y);
  const most = Math.max(0, container.radius - r);
  return d <= most
    ? { x, y }
    : { x: container.x + ((x - container.x) / d) * most, y: container.y + ((y - container.y) / d) * most };
}

/** The ids of a plate and of all that lies in it, however deep. */
function withInside(plates: readonly PlacedPlate[], id: string): ReadonlySet<string> {
  const own = new Set([id]);
  for (let size = 0; size < own.size;) {
    size = own.size;
    for (const plate of plates) if (plate.inside !== undefined && own.has(plate.inside)) own.add(plate.id);
  }
  return own;
}

function layPlate({ inside: _, ...plate }: PlacedPlate, inside: string | undefined): PlacedPlate {
  return { ...plate, locked: true, ...(inside === undefined ? {} : { inside }) };
}

function withPlates(sheet: NestedSheet, plates: readonly PlacedPlate[], wishes: readonly PlateWish[]): NestedSheet {
  const changed = { ...sheet, plates };
  return { ...changed, usedShare: usedShare(changed, wishes) };
}

function roundTurn(turnDeg: number): number {
  return ((turnDeg % 360) + 360) % 360;
}
