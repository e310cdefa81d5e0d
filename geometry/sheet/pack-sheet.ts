import { createDiscGrid, isFree, addDisc } from './disc-grid.ts';
import { countBound } from './count-bound.ts';
import { fillGaps, type Grain } from './fill-gaps.ts';
import { findFreeBox } from './free-box.ts';
import { pressIn } from './press-in.ts';
import {
  apart,
  areaOf,
  isRound,
  liesIn,
  widestIn,
  type BoxContainer,
  type Disc,
  type Container,
  type RoundContainer,
} from './container.ts';
import { layRows } from './rows.ts';

/** Equal plates that are to be packed, as discs. */
export interface PackSize {
  readonly r: number;
  readonly count: number;
  /** Containers inside each of them, about its centre. */
  readonly wastes: readonly RoundContainer[];
}

/** A container inside a plate that stays: what lies in it already, and whose it is. */
export interface WasteContainer {
  readonly container: RoundContainer;
  readonly discs: readonly Disc[];
  /** A plate that was there before, by its number in the caller's list, or one packed just now, by its number there. */
  readonly owner: { readonly before: number } | { readonly packed: number };
}

export interface PackTask {
  readonly container: BoxContainer;
  readonly fixed: readonly Disc[];
  readonly wastes: readonly WasteContainer[];
  /** Largest first. */
  readonly sizes: readonly PackSize[];
  /** Whether to search for one more where building comes to an end: slow, and worth it for a sheet that repeats. */
  readonly search: boolean;
}

export interface Packed {
  readonly size: number;
  readonly disc: Disc;
  readonly inside?: WasteContainer['owner'];
}

/** More discs than this are never moved together: a search among them finds nothing in the time it may take. */
const MOST_PRESSED = 36;

/** Never has a sheet with so few round plates been covered more densely: beyond it nothing is searched. */
const DENSEST = 0.9;

/** Searches that may fail on one sheet before no more are begun: small plates seldom gain by moving large ones. */
const MOST_IN_VAIN = 3;

/** With more sizes than this hardly a sheet repeats, and none is worth a search. */
const MOST_KINDS = 12;

/** Where the sheet would hold more than this of a size, or there are many sizes, fewer ways are tried. */
const MANY = 150;

const GRAINS: readonly Grain[] = ['x', 'y', 'snug'];

interface State {
  readonly discs: readonly Disc[];
  readonly packed: readonly Packed[];
  readonly wastes: readonly WasteContainer[];
}

/**
 * Fills one sheet: as many of the largest as can be, then as many of the next in the gaps, in round waste and beside
 * them. For each size several ways are built (rows of all kinds, heaps from each side, the snuggest gap) and the best
 * few kept; last, where it may help, one more is pressed in among all. Equal fills are told apart by how little of the
 * sheet's length or width they take.
 */
export function packSheet(task: PackTask): readonly Packed[] {
  const kinds = task.sizes.filter(({ count }) => count > 0).length;
  const width = kinds <= 2 ? 6 : kinds <= 5 ? 3 : 1;
  let searches = task.search && kinds <= MOST_KINDS ? MOST_IN_VAIN : 0;
  let states: readonly State[] = [{ discs: [], packed: [], wastes: task.wastes }];
  for (const [size, { r, count }] of task.sizes.entries()) {
    if (count <= 0) continue;
    const next = states.flatMap((state) => {
      const within = fillWastes(state, task, size);
      const left = count - (within.packed.length - state.packed.length);
      if (left <= 0 || r > widestIn(task.container)) return [within];
      return ways(task, within, r, left).map((discs) => withDiscs(within, task, size, discs));
    });
    states = bestOf(next, task, width);
    const first = states[0];
    if (searches > 0 && first && first.packed.filter((one) => one.size === size).length < count) {
      const more = pressMore(task, first, size);
      if (more === first) searches--;
      states = [more, ...states.slice(1)];
    }
  }
  return states[0]?.packed ?? [];
}

/** Several fills of what is free in the sheet with discs of one radius, the fuller ones among those tried. */
function ways(task: PackTask, state: State, r: number, most: number): readonly (readonly Disc[])[] {
  const taken = [...task.fixed, ...state.discs];
  const heap = (grain: Grain) => fillGaps(createDiscGrid(task.container, taken), r, most, grain);
  const fills = [heap('snug')];
  // whatever is free touches two neighbours somewhere: nothing there, nothing anywhere
  if (fills[0]?.length === 0) return fills;
  const many = task.sizes.length > 5 || areaOf(task.container) > MANY * 4 * r * r;
  fills.push(heap('x'), heap('y'));
  const box = taken.length > 0 ? findFreeBox(task.container, taken) : undefined;
  const rows = [
    ...layRows(task.container, r).slice(0, many ? 3 : 10),
    ...(box ? layRows(box, r).slice(0, many ? 2 : 6) : []),
  ];
  for (const row of rows) {
    const grid = createDiscGrid(task.container, taken);
    const laid = row.filter((disc) => isFree(grid, disc)).slice(0, most);
    for (const disc of laid) addDisc(grid, disc);
    fills.push([...laid, ...fillGaps(grid, r, most - laid.length, 'snug')]);
  }
  const fullest = Math.max(...fills.map((fill) => fill.length));
  return fills.filter((fill) => fill.length >= fullest - 1);
}

function withDiscs(state: State, task: PackTask, size: number, discs: readonly Disc[]): State {
  const packed = [...state.packed, ...discs.map((disc) => ({ size, disc }))];
  const wastes = discs.flatMap((disc, i) => wastesOf(task.sizes[size]!, disc, state.packed.length + i));
  return { discs: [...state.discs, ...discs], packed, wastes: [...state.wastes, ...wastes] };
}

function wastesOf({ wastes }: PackSize, { x, y }: Disc, packed: number): readonly WasteContainer[] {
  return wastes.map((container) => ({
    container: { x: x + container.x, y: y + container.y, radius: container.radius },
    discs: [],
    owner: { packed },
  }));
}

/** Waste costs nothing: it is filled first. What is put there may bring waste of its own, for the sizes that follow. */
function fillWastes(state: State, task: PackTask, size: number): State {
  const { r, count } = task.sizes[size]!;
  let left = count;
  const packed = [...state.packed];
  const wastes: WasteContainer[] = [];
  const more: WasteContainer[] = [];
  for (const waste of state.wastes) {
    const discs = r <= widestIn(waste.container) ? fillRound(waste, r, left, task.search) : [];
    left -= discs.length;
    for (const disc of discs) {
      more.push(...wastesOf(task.sizes[size]!, disc, packed.length));
      packed.push({ size, disc, inside: waste.owner });
    }
    wastes.push(discs.length > 0 ? { ...waste, discs: [...waste.discs, ...discs] } : waste);
  }
  return { discs: state.discs, packed, wastes: [...wastes, ...more] };
}

function fillRound({ container, discs }: WasteContainer, r: number, most: number, search: boolean): readonly Disc[] {
  if (most <= 0) return [];
  const fills = GRAINS.map((grain) => fillGaps(createDiscGrid(container, discs), r, most, grain));
  for (const row of layRows(container, r)) {
    const grid = createDiscGrid(container, discs);
    const laid = row.filter((disc) => isFree(grid, disc)).slice(0, most);
    for (const disc of laid) addDisc(grid, disc);
    fills.push([...laid, ...fillGaps(grid, r, most - laid.length, 'snug')]);
  }
  let best = fills.reduce((a, b) => (b.length > a.length ? b : a));
  while (search && best.length < most) {
    const more = oneMore(container, discs, best, r);
    if (!more) break;
    best = more;
  }
  return best;
}

/** Presses discs of this size in among all that lie there, one at a time, until one finds no place. */
function pressMore(task: PackTask, state: State, size: number): State {
  const { r, count } = task.sizes[size]!;
  let now = state;
  while (now.packed.filter((one) => one.size === size).length < count) {
    const outside = now.packed.filter((one) => !one.inside);
    // plates with others inside them would have to take them along
    if (outside.length < now.packed.length || now.wastes.length > 0) return now;
    if (task.fixed.length === 0 && outside.every((one) => one.size === size)) {
      if (outside.length >= countBound(task.container, r)) return now;
    }
    const discs = oneMore(task.container, task.fixed, now.discs, r);
    if (!discs) return now;
    const packed = discs.map((disc, i) => ({ size: now.packed[i]?.size ?? size, disc }));
    now = { discs, packed, wastes: now.wastes };
  }
  return now;
}

/** The discs, moved, and one more of radius r behind them; undefined where none is found. */
function oneMore(
  container: Container,
  fixed: readonly Disc[],
  discs: readonly Disc[],
  r: number,
): readonly Disc[] | undefined {
  const radii = [...discs.map((disc) => disc.r), r];
  const covered = [...radii, ...fixed.map((disc) => disc.r)].reduce((sum, one) => sum + Math.PI * one * one, 0);
  if (radii.length > MOST_PRESSED || covered > DENSEST * areaOf(container) || r > widestIn(container)) return undefined;
  const middle = isRound(container)
    ? container
    : { x: (container.minX + container.maxX) / 2, y: (container.minY + container.maxY) / 2 };
  const from = Float64Array.from([...discs, middle].flatMap(({ x, y }) => [x, y]));
  const [starts, hops] = radii.length <= 20 ? [6, 8] : [3, 5];
  const at = pressIn({ radii, container, fixed, from, starts, hops });
  if (!at) return undefined;
  const pressed = radii.map((one, i) => ({ x: at[2 * i]!, y: at[2 * i + 1]!, r: one }));
  const holds = pressed.every(
    (disc, i) =>
      liesIn(disc, container) &&
      fixed.every((other) => apart(disc, other)) &&
      pressed.slice(i + 1).every((other) => apart(disc, other)),
  );
  return holds ? pressed : undefined;
}

/** The fullest states, those that take least of the sheet first; no two that are alike. */
function bestOf(states: readonly State[], { container, sizes }: PackTask, width: number): readonly State[] {
  const ranked = states.map((state) => {
    const counts = sizes.map((_, size) => state.packed.filter((one) => one.size === size).length);
    const used = stripArea(state.discs, container);
    return { state, counts, used, mark: `${counts.join()}/${Math.round(used)}/${sum(state.discs)}` };
  });
  ranked.sort((a, b) => {
    const size = a.counts.findIndex((count, i) => count !== b.counts[i]);
    return size >= 0 ? b.counts[size]! - a.counts[size]! : a.used - b.used;
  });
  const seen = new Set<string>();
  return ranked
    .filter(({ mark }) => !seen.has(mark) && seen.add(mark))
    .slice(0, width)
    .map(({ state }) => state);
}

/** Area of the strip, across or along, that a straight cut beyond all discs takes. */
function stripArea(discs: readonly Disc[], container: BoxContainer): number {
  const right = discs.reduce((most, { x, r }) => Math.max(most, x + r - container.minX), 0);
  const top = discs.reduce((most, { y, r }) => Math.max(most, y + r - container.minY), 0);
  return Math.min(right * (container.maxY - container.minY), top * (container.maxX - container.minX));
}

function sum(discs: readonly Disc[]): number {
  return Math.round(discs.reduce((total, { x, y }) => total + x + 3 * y, 0));
}
