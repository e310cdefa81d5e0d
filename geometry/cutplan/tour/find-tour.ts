/**
 * A short round trip through groups of points, one point of each: the generalised travelling salesman's problem; with
 * one point in each group, the plain one.
 *
 * In: groups of points, some of them in clusters: a cluster once begun is finished before another is (the letters of a word);
 * groups without one may come anywhere.
 * Out: the sequence of the groups and the point taken in each. The same input gives the same tour. Not promised: the
 * shortest; on published instances of 51 to 100 points it stays within 2 % (tests/cutplan/tour.test.ts).
 *
 * 1. Nearest next from the first group.
 * 2. Local search until nothing helps: 2-opt and Or-opt (segments of up to three, either way round) over lists of near
 *    groups, with don't-look bits; then the best point of each group between its neighbours.
 * 3. The tour is kicked (double bridge, mostly over a short stretch) and mended, so many times; a kick that leaves it longer is
 *    taken back, or kept by a chance that falls to none; the shortest found is what counts.
 *    Martin, Otto, Felten, "Large-step Markov chains for the traveling salesman problem", Complex Systems 5 (1991) 299;
 *    Bentley, "Fast algorithms for geometric traveling salesman problems", ORSA J. Computing 4 (1992) 387.
 */
import type { Point } from '../../shapes.ts';
import type { TourGroup } from './tour-group.ts';
import { TourState } from './tour-state.ts';
import { LEAST_GAIN_MM } from '../../units.ts';

export interface Tour {
  /** Numbers of groups in their sequence, round. */
  readonly sequence: readonly number[];
  /** For each group (by its number, not its place in the sequence) the number of the point taken. */
  readonly taken: readonly number[];
  readonly lengthMm: number;
}

export interface TourWishes {
  /** Kicks for each group; more are slower and shorter. */
  readonly kicksPerGroup?: number;
  /** Between two points; usual: the straight distance. It must be the same both ways. */
  readonly distance?: (a: Point, b: Point) => number;
}

/** From this many kicks a group on, tours of a hundred points seldom become shorter. */
const KICKS_PER_GROUP = 40;
/** Most kicks change a stretch no longer than this: elsewhere the tour stays good. */
const KICK_REACH = 30;
/** How much longer a kick may leave the tour at first, on the average, of the mean way between two groups. */
const WARMTH = 0.2;
/** So many kicks reach as far as the tour goes: how words follow each other changes by such alone. */
const FAR_SHARE = 0.1;

export function findTour(groups: readonly TourGroup[], wishes: TourWishes = {}): Tour {
  if (groups.some((g) => g.points.length === 0)) throw new RangeError('every group needs a point');
  const n = groups.length;
  if (n === 0) return { sequence: [], taken: [], lengthMm: 0 };
  const search = new Search(groups, wishes.distance ?? straight);
  search.settle();
  if (n >= 5) search.kick(Math.round(n * (wishes.kicksPerGroup ?? KICKS_PER_GROUP)));
  search.bestPoints();
  return { sequence: [...search.sequence], taken: [...search.taken], lengthMm: search.length() };
}

function straight(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

class Search extends TourState {
  /** Local search from wherever the tour is, all groups looked at. */
  settle(): void {
    for (let g = 0; g < this.n; g++) this.awake(g);
    this.mend();
    this.bestPoints();
    for (let g = 0; g < this.n; g++) this.awake(g);
    this.mend();
  }

  kick(times: number): void {
    if (this.n < 5) return;
    let now = this.weight();
    let best = { mm: now, sequence: this.sequence.slice(), taken: this.taken.slice() };
    const warmMm = (WARMTH * now) / this.n;
    for (let k = 0; k < times; k++) {
      const [sequence, taken] = [this.sequence.slice(), this.taken.slice()];
      this.doubleBridge();
      this.mend();
      const kicked = this.weight();
      // The longer it goes on, the less a kick may make the tour longer.
      const allowedMm = -warmMm * (1 - k / times) * Math.log(1 - this.random());
      if (kicked - now > allowedMm) {
        this.setSequence(sequence);
        this.taken = taken;
        continue;
      }
      now = kicked;
      if (now < best.mm - LEAST_GAIN_MM) best = { mm: now, sequence: this.sequence.slice(), taken: this.taken.slice() };
    }
    this.setSequence(best.sequence);
    this.taken = best.taken;
  }

  private mend(): void {
    for (let g = this.queue.shift(); g !== undefined; g = this.queue.shift()) {
      this.queued[g] = 0;
      while (this.betterPoint(g) || this.twoOpt(g) || this.moveSegment(g));
    }
  }

  /** Another point of the group itself. */
  private betterPoint(g: number): boolean {
    const { points } = this.groups[g]!;
    if (points.length === 1 || this.n < 2) return false;
    const [a, b] = [this.pointOf(this.previous(g)), this.pointOf(this.next(g))];
    let best = this.taken[g]!;
    let least = this.distance(a, points[best]!) + this.distance(points[best]!, b) - LEAST_GAIN_MM;
    points.forEach((p, i) => {
      const mm = this.distance(a, p) + this.distance(p, b);
      if (mm < least) [least, best] = [mm, i];
    });
    if (best === this.taken[g]) return false;
    this.taken[g] = best;
    this.awake(this.previous(g));
    this.awake(this.next(g));
    return true;
  }

  /** Two sides exchanged for two others; the stretch between runs backwards. */
  private twoOpt(a: number): boolean {
    for (const forward of [true, false]) {
      const aNext = forward ? this.next(a) : this.previous(a);
      const sideA = this.gap(a, aNext);
      for (const c of this.near[a]!) {
        const ac = this.gap(a, c);
        if (ac >= sideA) break;
        const cNext = forward ? this.next(c) : this.previous(c);
        if (c === aNext || cNext === a) continue;
        const gain = sideA + this.gap(c, cNext) - ac - this.gap(aNext, cNext);
        if (gain <= LEAST_GAIN_MM) continue;
        const [from, to] = forward ? [this.place[aNext]!, this.place[c]!] : [this.place[c]!, this.place[aNext]!];
        this.reverse(from, to);
        if (!this.keepsClusters()) {
          this.reverse(from, to);
          continue;
        }
        for (const g of [a, aNext, c, cNext]) this.awake(g);
        return true;
      }
    }
    return false;
  }

  /** A segment of one to three groups that begins or ends at a, put between c and a neighbour of c, either way round. */
  private moveSegment(a: number): boolean {
    if (this.n < 5) return false;
    for (let size = 1; size <= 3 && size <= this.n - 3; size++) {
      for (const forward of [true, false]) {
        // The segment runs from a away: forward means a is its first group.
        const start = forward ? this.place[a]! : (this.place[a]! - size + 1 + this.n) % this.n;
        const first = this.sequence[start]!;
        const last = this.sequence[(start + size - 1) % this.n]!;
        const [before, after] = [this.previous(first), this.next(last)];
        const freed = this.gap(before, first) + this.gap(last, after) - this.gap(before, after);
        if (freed <= LEAST_GAIN_MM) continue;
        for (const c of this.near[a]!) {
          const ac = this.gap(a, c);
          if (ac >= freed) break;
          const within = (this.place[c]! - start + this.n) % this.n;
          if (within < size) continue;
          const other = a === first ? last : first;
          for (const d of [this.next(c), this.previous(c)]) {
            const dWithin = (this.place[d]! - start + this.n) % this.n;
            if (dWithin < size) continue;
            const gain = freed + this.gap(c, d) - ac - this.gap(other, d);
            if (gain <= LEAST_GAIN_MM) continue;
            const known = this.sequence;
            this.insert(start, size, c, d, a);
            if (!this.keepsClusters()) {
              this.setSequence(known);
              continue;
            }
            for (const g of [before, after, first, last, c, d]) this.awake(g);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** A B C becomes B A C for two stretches A, B one after the other. */
  private doubleBridge(): void {
    const { n } = this;
    const reach = this.random() < FAR_SHARE ? n - 1 : Math.min(n - 1, KICK_REACH);
    const one = 1 + Math.floor(this.random() * (reach - 1));
    const two = one + 1 + Math.floor(this.random() * (reach - one));
    const i = Math.floor(this.random() * n);
    const [j, k] = [(i + one) % n, (i + two) % n];
    const stretch = (from: number, to: number) =>
      Array.from({ length: (to - from + n) % n }, (_, s) => this.sequence[(from + s) % n]!);
    const [a, b, rest] = [stretch(i, j), stretch(j, k), stretch(k, i)];
    if (rest.length === 0 || a.length === 0 || b.length === 0) return;
    const known = this.sequence;
    this.setSequence([...b, ...a, ...rest]);
    if (!this.keepsClusters()) {
      this.setSequence(known);
      return;
    }
    for (const g of [a[0]!, a.at(-1)!, b[0]!, b.at(-1)!, rest[0]!, rest.at(-1)!]) this.awake(g);
  }
}
