/**
 * A short round trip through groups of points, one point of each: the generalised travelling salesman's problem; with
 * one point in each group, the plain one.
 *
 * In: groups of points, some of them in clubs: a club once begun is finished before another is (the letters of a word);
 * groups without one may come anywhere.
 * Out: the order of the groups and the point taken in each. The same input gives the same tour. Not promised: the
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
import { seeded } from '../../sheet/seeded.ts';
import type { Point } from '../../shapes.ts';
import { bestPoints } from './best-points.ts';
import { LOOSE, passages } from './clubs.ts';
import { LEAST_GAIN_MM } from '../../units.ts';

export interface TourGroup {
  /** Where it may be entered and left. At least one. */
  readonly points: readonly Point[];
  /** No other club is visited between groups of one club. */
  readonly club?: string;
}

export interface Tour {
  /** Numbers of groups in their order, round. */
  readonly order: readonly number[];
  /** For each group (by its number, not its place in the order) the number of the point taken. */
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
const NEAR = 10;
/** Most kicks change a stretch no longer than this: elsewhere the tour stays good. */
const KICK_REACH = 30;
/** How much longer a kick may leave the tour at first, on the average, of the mean way between two groups. */
const WARMTH = 0.2;
/** So many kicks reach as far as the tour goes: how words follow each other changes by such alone. */
const FAR_SHARE = 0.1;

export function shortTour(groups: readonly TourGroup[], wishes: TourWishes = {}): Tour {
  if (groups.some((g) => g.points.length === 0)) throw new RangeError('every group needs a point');
  const n = groups.length;
  if (n === 0) return { order: [], taken: [], lengthMm: 0 };
  const search = new Search(groups, wishes.distance ?? straight);
  search.settle();
  if (n >= 5) search.kick(Math.round(n * (wishes.kicksPerGroup ?? KICKS_PER_GROUP)));
  search.bestPoints();
  return { order: [...search.order], taken: [...search.taken], lengthMm: search.length() };
}

function straight(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

class Search {
  readonly n: number;
  order: number[];
  taken: number[];
  private readonly place: Int32Array;
  private readonly near: Int32Array[];
  private readonly club: Int32Array;
  private readonly clubs: number;
  private queue: number[] = [];
  private readonly queued: Uint8Array;
  private readonly random = seeded(1);

  constructor(
    private readonly groups: readonly TourGroup[],
    private readonly distance: (a: Point, b: Point) => number,
  ) {
    const n = (this.n = groups.length);
    this.place = new Int32Array(n);
    this.queued = new Uint8Array(n);
    this.taken = groups.map(() => 0);
    const clubs = new Map<string, number>();
    this.club = Int32Array.from(groups, ({ club }) => {
      if (club === undefined) return LOOSE;
      if (!clubs.has(club)) clubs.set(club, clubs.size);
      return clubs.get(club)!;
    });
    this.clubs = clubs.size;
    this.near = groups.map((_, i) => this.nearest(i));
    this.order = this.nearestNext();
    this.order.forEach((g, at) => (this.place[g] = at));
  }

  length(): number {
    let sum = 0;
    for (let i = 0; i < this.n; i++) {
      const [a, b] = [this.order[i]!, this.order[(i + 1) % this.n]!];
      sum += this.distance(this.pointOf(a), this.pointOf(b));
    }
    return this.n > 1 ? sum : 0;
  }

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
    let best = { mm: now, order: this.order.slice(), taken: this.taken.slice() };
    const warmMm = (WARMTH * now) / this.n;
    for (let k = 0; k < times; k++) {
      const [order, taken] = [this.order.slice(), this.taken.slice()];
      this.doubleBridge();
      this.mend();
      const kicked = this.weight();
      // The longer it goes on, the less a kick may make the tour longer.
      const allowedMm = -warmMm * (1 - k / times) * Math.log(1 - this.random());
      if (kicked - now > allowedMm) {
        this.setOrder(order);
        this.taken = taken;
        continue;
      }
      now = kicked;
      if (now < best.mm - LEAST_GAIN_MM) best = { mm: now, order: this.order.slice(), taken: this.taken.slice() };
    }
    this.setOrder(best.order);
    this.taken = best.taken;
  }

  bestPoints(): void {
    if (this.groups.every((g) => g.points.length === 1)) return;
    const sizes = this.groups.map((g) => g.points.length);
    this.taken = bestPoints(sizes, this.order, (g, i, h, j) =>
      this.distance(this.groups[g]!.points[i]!, this.groups[h]!.points[j]!),
    );
  }

  private weight(): number {
    let sum = 0;
    for (let i = 0; i < this.n; i++) sum += this.gap(this.order[i]!, this.order[(i + 1) % this.n]!);
    return sum;
  }

  private pointOf(g: number): Point {
    return this.groups[g]!.points[this.taken[g]!]!;
  }

  private gap(a: number, b: number): number {
    return this.distance(this.pointOf(a), this.pointOf(b));
  }

  private groupGap(a: number, b: number): number {
    let least = Infinity;
    for (const p of this.groups[a]!.points)
      for (const q of this.groups[b]!.points) least = Math.min(least, this.distance(p, q));
    return least;
  }

  private nearest(i: number): Int32Array {
    const others: { g: number; mm: number }[] = [];
    for (let g = 0; g < this.n; g++) if (g !== i) others.push({ g, mm: this.groupGap(i, g) });
    others.sort((a, b) => a.mm - b.mm || a.g - b.g);
    return Int32Array.from(others.slice(0, NEAR), (o) => o.g);
  }

  private nearestNext(): number[] {
    const left = new Set(this.groups.keys());
    const order: number[] = [];
    let begun = LOOSE;
    // Begun with a club, so that none is open where the round closes.
    for (
      let at = Math.max(
        0,
        this.club.findIndex((c) => c !== LOOSE),
      );
      ;
    ) {
      order.push(at);
      left.delete(at);
      if (left.size === 0) return order;
      const club = this.club[at]! === LOOSE ? begun : this.club[at]!;
      begun = [...left].some((g) => this.club[g] === club) ? club : LOOSE;
      let [next, least] = [-1, Infinity];
      for (const g of left) {
        if (begun !== LOOSE && this.club[g] !== LOOSE && this.club[g] !== begun) continue;
        const mm = this.gap(at, g);
        if (mm < least) [next, least] = [g, mm];
      }
      at = next;
    }
  }

  private awake(g: number): void {
    if (this.queued[g]) return;
    this.queued[g] = 1;
    this.queue.push(g);
  }

  private mend(): void {
    for (let g = this.queue.shift(); g !== undefined; g = this.queue.shift()) {
      this.queued[g] = 0;
      while (this.betterPoint(g) || this.twoOpt(g) || this.moveSegment(g));
    }
  }

  private next(g: number): number {
    const at = this.place[g]! + 1;
    return this.order[at === this.n ? 0 : at]!;
  }

  private previous(g: number): number {
    const at = this.place[g]!;
    return this.order[at === 0 ? this.n - 1 : at - 1]!;
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
        if (!this.keepsClubs()) {
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
        const first = this.order[start]!;
        const last = this.order[(start + size - 1) % this.n]!;
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
            const known = this.order;
            this.insert(start, size, c, d, a);
            if (!this.keepsClubs()) {
              this.setOrder(known);
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

  /** Takes out the segment and puts it between c and d, with a next to c. */
  private insert(start: number, size: number, c: number, d: number, a: number): void {
    const segment = Array.from({ length: size }, (_, i) => this.order[(start + i) % this.n]!);
    const rest = Array.from({ length: this.n - size }, (_, i) => this.order[(start + size + i) % this.n]!);
    const cAt = rest.indexOf(c);
    const cFirst = rest[(cAt + 1) % rest.length] === d;
    const aFirst = segment[0] === a;
    if (cFirst !== aFirst) segment.reverse();
    const at = cFirst ? cAt + 1 : cAt;
    this.setOrder([...rest.slice(0, at), ...segment, ...rest.slice(at)]);
  }

  /** Turns round the stretch from place i to place j, or the rest of the ring where that is shorter. */
  private reverse(i: number, j: number): void {
    const { n } = this;
    let length = ((j - i + n) % n) + 1;
    if (length * 2 > n) {
      [i, j] = [(j + 1) % n, (i - 1 + n) % n];
      length = n - length;
    }
    for (let k = length >> 1; k > 0; k--) {
      const [p, q] = [this.order[i]!, this.order[j]!];
      this.order[i] = q;
      this.order[j] = p;
      this.place[q] = i;
      this.place[p] = j;
      i = i + 1 === n ? 0 : i + 1;
      j = j === 0 ? n - 1 : j - 1;
    }
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
      Array.from({ length: (to - from + n) % n }, (_, s) => this.order[(from + s) % n]!);
    const [a, b, rest] = [stretch(i, j), stretch(j, k), stretch(k, i)];
    if (rest.length === 0 || a.length === 0 || b.length === 0) return;
    const known = this.order;
    this.setOrder([...b, ...a, ...rest]);
    if (!this.keepsClubs()) {
      this.setOrder(known);
      return;
    }
    for (const g of [a[0]!, a.at(-1)!, b[0]!, b.at(-1)!, rest[0]!, rest.at(-1)!]) this.awake(g);
  }

  private setOrder(order: number[]): void {
    this.order = order;
    order.forEach((g, i) => (this.place[g] = i));
  }

  private keepsClubs(): boolean {
    return this.clubs < 2 || passages(this.order, (g) => this.club[g]!) <= this.clubs;
  }
}
