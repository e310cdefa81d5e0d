import { GRID_MM, ROUNDING } from '../units.ts';
import { relax, type Rest } from './relax.ts';
import { isRound, type Disc, type Container } from './container.ts';
import { seeded } from './seeded.ts';

/** What is to be pressed into a container: discs of these radii, beside those that are there already. */
export interface PressWish {
  readonly radii: readonly number[];
  readonly container: Container;
  readonly fixed: readonly Disc[];
  /** Where to begin, before scattered places: x0, y0, x1, y1 .. */
  readonly from: Float64Array;
  /** Starts, and hops in vain before a start is given up: numbers, so that every machine finds the same. */
  readonly starts: number;
  readonly hops: number;
}

export interface Pressed {
  /** All radii may be multiplied by this without an overlap. */
  readonly scale: number;
  readonly at: Float64Array;
}

/** How closely a state is relaxed: roughly, to compare it with others, and finely, once it is the best. */
const ROUGH = { steps: 70, scales: 4 };
const FINE = { steps: 400, scales: 14 };

/** A share of the scale that makes a rough state worth going on from. */
const WORTH = 0.0001;

/** A share of the energy that makes a hop worth it. */
const GAIN = 0.01;

/** Overlaps whose squares add up to less are each far under half a grid step: nothing overlaps, as far as a cut goes. */
const AT_REST_MM2 = GRID_MM ** 2 / 16;

/**
 * Places for the discs at which they can be as large as possible, as far as a search of fixed length finds: from
 * scattered places they are relaxed until they just touch, and the most squeezed one hops elsewhere (basin hopping:
 * Grosso, Jamali, Locatelli and Schoen, Solving the problem of packing equal and unequal circles in a circular
 * container, 2010). The places are as good as told; that there are none better is not proven.
 */
export function pressLarge(wish: PressWish): Pressed {
  const search = searchOf(wish);
  let best: Pressed | undefined;
  for (let start = 0; start < wish.starts; start++) {
    let state = settle(search.begin(start), wish, best?.scale ?? roughScale(wish), ROUGH);
    for (let hop = 0; hop < wish.hops; hop++) {
      const next = settle(search.hop(state.rest, hop), wish, state.scale, ROUGH);
      if (next.scale > state.scale * (1 + WORTH)) [state, hop] = [next, -1];
    }
    if (best && state.scale < best.scale * (1 - WORTH)) continue;
    const fine = settle(state.rest.at, wish, state.scale, FINE);
    if (!best || fine.scale > best.scale) best = { scale: fine.scale, at: fine.rest.at };
  }
  return best ?? { scale: 0, at: wish.from };
}

/** Places at which the discs, as large as they are, do not overlap; undefined where the same search finds none. */
export function pressIn(wish: PressWish): Float64Array | undefined {
  const search = searchOf(wish);
  const settleHere = (from: Float64Array, steps: number) => relax({ ...wish, scale: 1 }, from, steps, AT_REST_MM2);
  for (let start = 0; start < wish.starts; start++) {
    let rest = settleHere(search.begin(start), 2 * ROUGH.steps);
    for (let hop = 0; hop < wish.hops && rest.energy > AT_REST_MM2; hop++) {
      const next = settleHere(search.hop(rest, hop), 2 * ROUGH.steps);
      if (next.energy < rest.energy * (1 - GAIN)) [rest, hop] = [next, -1];
    }
    if (rest.energy > AT_REST_MM2) rest = settleHere(rest.at, FINE.steps);
    if (rest.energy <= AT_REST_MM2) return rest.at;
  }
  return undefined;
}

/** Where a search begins, and where it goes on. */
function searchOf({ radii, container, from }: PressWish) {
  const chance = seeded(radii.length);
  const box = boxOf(container);
  const throwIn = (at: Float64Array, who: number): void => {
    at[2 * who] = box.minX + chance() * (box.maxX - box.minX);
    at[2 * who + 1] = box.minY + chance() * (box.maxY - box.minY);
  };
  return {
    begin(start: number): Float64Array {
      const at = from.slice();
      if (start > 0) radii.forEach((_, who) => throwIn(at, who));
      return at;
    },
    /** The most squeezed disc, or in turn any other, leaves for somewhere else. */
    hop(rest: Rest, hop: number): Float64Array {
      const at = rest.at.slice();
      throwIn(at, hop % 2 ? Math.floor(chance() * radii.length) : mostSqueezed(rest));
      return at;
    },
  };
}

interface Settled {
  readonly scale: number;
  readonly rest: Rest;
}

/**
 * From a state to the scale at which the discs just touch. The root of the energy falls nearly straight to nothing
 * there, so its tangent gives the next scale to try, from above.
 */
function settle(start: Float64Array, wish: PressWish, guess: number, { steps, scales }: typeof ROUGH): Settled {
  const { radii, container, fixed } = wish;
  let scale = guess * 1.03;
  let rest = relax({ radii, container, fixed, scale }, start, steps, 0);
  for (let i = 0; i < scales; i++) {
    const pressed = rest.energy > 0;
    const down = pressed && rest.perScale > 0 ? (2 * rest.energy) / rest.perScale : 0;
    const next = pressed ? Math.max(freeScale(rest.at, wish), scale - 0.97 * down) : scale * 1.01;
    if (pressed && scale - next < ROUNDING * scale) break;
    scale = next;
    rest = relax({ radii, container, fixed, scale }, rest.at, steps, 0);
    // still pressed at less than is known already: it will not come to more
    if (rest.energy > 0 && scale < guess) break;
  }
  return { scale: freeScale(rest.at, wish), rest };
}

/** The largest scale at which discs about these centres neither overlap nor leave the container. */
export function freeScale(
  at: Float64Array,
  { radii, container, fixed }: Pick<PressWish, 'radii' | 'container' | 'fixed'>,
): number {
  let least = Infinity;
  for (let i = 0; i < radii.length; i++) {
    const [x, y, r] = [at[2 * i]!, at[2 * i + 1]!, radii[i]!];
    if (isRound(container))
      least = Math.min(least, (container.radius - Math.hypot(x - container.x, y - container.y)) / r);
    else
      least = Math.min(
        least,
        (x - container.minX) / r,
        (container.maxX - x) / r,
        (y - container.minY) / r,
        (container.maxY - y) / r,
      );
    for (const other of fixed) least = Math.min(least, (Math.hypot(x - other.x, y - other.y) - other.r) / r);
    for (let j = i + 1; j < radii.length; j++) {
      least = Math.min(least, Math.hypot(x - at[2 * j]!, y - at[2 * j + 1]!) / (r + radii[j]!));
    }
  }
  return least;
}

function mostSqueezed({ pain }: Rest): number {
  let who = 0;
  for (let i = 1; i < pain.length; i++) if (pain[i]! > pain[who]!) who = i;
  return who;
}

/** The scale at which the discs would cover four fifths of the container: somewhere to begin. */
function roughScale({ radii, container }: PressWish): number {
  const box = boxOf(container);
  const covered = radii.reduce((sum, r) => sum + Math.PI * r * r, 0);
  return Math.sqrt((0.8 * (box.maxX - box.minX) * (box.maxY - box.minY)) / covered);
}

function boxOf(container: Container) {
  if (!isRound(container)) return container;
  const { x, y, radius } = container;
  return { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius };
}
