import type { Point } from '../../shapes.ts';
import { seeded } from '../../sheet/seeded.ts';
import { chooseBestPoints } from './best-points.ts';
import { countPassages, LOOSE } from './clusters.ts';
import type { TourGroup } from './tour-group.ts';

/** Groups looked at from each group: its nearest. */
const NEAR = 10;

/** A tour as it stands, the changes it can undergo, and the groups that are to be looked at again. */
export class TourState {
  readonly n: number;
  sequence: number[];
  taken: number[];
  protected readonly place: Int32Array;
  protected readonly near: Int32Array[];
  protected readonly cluster: Int32Array;
  protected readonly clusters: number;
  protected queue: number[] = [];
  protected readonly queued: Uint8Array;
  protected readonly random = seeded(1);

  constructor(
    protected readonly groups: readonly TourGroup[],
    protected readonly distance: (a: Point, b: Point) => number,
  ) {
    const n = (this.n = groups.length);
    this.place = new Int32Array(n);
    this.queued = new Uint8Array(n);
    this.taken = groups.map(() => 0);
    const clusters = new Map<string, number>();
    this.cluster = Int32Array.from(groups, ({ cluster }) => {
      if (cluster === undefined) return LOOSE;
      if (!clusters.has(cluster)) clusters.set(cluster, clusters.size);
      return clusters.get(cluster)!;
    });
    this.clusters = clusters.size;
    this.near = groups.map((_, i) => this.nearest(i));
    this.sequence = this.nearestNext();
    this.sequence.forEach((g, at) => (this.place[g] = at));
  }

  length(): number {
    let sum = 0;
    for (let i = 0; i < this.n; i++) {
      const [a, b] = [this.sequence[i]!, this.sequence[(i + 1) % this.n]!];
      sum += this.distance(this.pointOf(a), this.pointOf(b));
    }
    return this.n > 1 ? sum : 0;
  }

  bestPoints(): void {
    if (this.groups.every((g) => g.points.length === 1)) return;
    const sizes = this.groups.map((g) => g.points.length);
    this.taken = chooseBestPoints(sizes, this.sequence, (g, i, h, j) =>
      this.distance(this.groups[g]!.points[i]!, this.groups[h]!.points[j]!),
    );
  }

  protected weight(): number {
    let sum = 0;
    for (let i = 0; i < this.n; i++) sum += this.gap(this.sequence[i]!, this.sequence[(i + 1) % this.n]!);
    return sum;
  }

  protected pointOf(g: number): Point {
    return this.groups[g]!.points[this.taken[g]!]!;
  }

  protected gap(a: number, b: number): number {
    return this.distance(this.pointOf(a), this.pointOf(b));
  }

  protected groupGap(a: number, b: number): number {
    let least = Infinity;
    for (const p of this.groups[a]!.points)
      for (const q of this.groups[b]!.points) least = Math.min(least, this.distance(p, q));
    return least;
  }

  protected nearest(i: number): Int32Array {
    const others: { g: number; mm: number }[] = [];
    for (let g = 0; g < this.n; g++) if (g !== i) others.push({ g, mm: this.groupGap(i, g) });
    others.sort((a, b) => a.mm - b.mm || a.g - b.g);
    return Int32Array.from(others.slice(0, NEAR), (o) => o.g);
  }

  protected nearestNext(): number[] {
    const left = new Set(this.groups.keys());
    const sequence: number[] = [];
    let begun = LOOSE;
    // Begun with a cluster, so that none is open where the round closes.
    for (
      let at = Math.max(
        0,
        this.cluster.findIndex((c) => c !== LOOSE),
      );
      ;
    ) {
      sequence.push(at);
      left.delete(at);
      if (left.size === 0) return sequence;
      const cluster = this.cluster[at]! === LOOSE ? begun : this.cluster[at]!;
      begun = [...left].some((g) => this.cluster[g] === cluster) ? cluster : LOOSE;
      let [next, least] = [-1, Infinity];
      for (const g of left) {
        if (begun !== LOOSE && this.cluster[g] !== LOOSE && this.cluster[g] !== begun) continue;
        const mm = this.gap(at, g);
        if (mm < least) [next, least] = [g, mm];
      }
      at = next;
    }
  }

  protected awake(g: number): void {
    if (this.queued[g]) return;
    this.queued[g] = 1;
    this.queue.push(g);
  }

  protected next(g: number): number {
    const at = this.place[g]! + 1;
    return this.sequence[at === this.n ? 0 : at]!;
  }

  protected previous(g: number): number {
    const at = this.place[g]!;
    return this.sequence[at === 0 ? this.n - 1 : at - 1]!;
  }

  /** Takes out the segment and puts it between c and d, with a next to c. */
  protected insert(start: number, size: number, c: number, d: number, a: number): void {
    const segment = Array.from({ length: size }, (_, i) => this.sequence[(start + i) % this.n]!);
    const rest = Array.from({ length: this.n - size }, (_, i) => this.sequence[(start + size + i) % this.n]!);
    const cAt = rest.indexOf(c);
    const cFirst = rest[(cAt + 1) % rest.length] === d;
    const aFirst = segment[0] === a;
    if (cFirst !== aFirst) segment.reverse();
    const at = cFirst ? cAt + 1 : cAt;
    this.setSequence([...rest.slice(0, at), ...segment, ...rest.slice(at)]);
  }

  /** Turns round the stretch from place i to place j, or the rest of the ring where that is shorter. */
  protected reverse(i: number, j: number): void {
    const { n } = this;
    let length = ((j - i + n) % n) + 1;
    if (length * 2 > n) {
      [i, j] = [(j + 1) % n, (i - 1 + n) % n];
      length = n - length;
    }
    for (let k = length >> 1; k > 0; k--) {
      const [p, q] = [this.sequence[i]!, this.sequence[j]!];
      this.sequence[i] = q;
      this.sequence[j] = p;
      this.place[q] = i;
      this.place[p] = j;
      i = i + 1 === n ? 0 : i + 1;
      j = j === 0 ? n - 1 : j - 1;
    }
  }

  protected setSequence(sequence: number[]): void {
    this.sequence = sequence;
    sequence.forEach((g, i) => (this.place[g] = i));
  }

  protected keepsClusters(): boolean {
    return this.clusters < 2 || countPassages(this.sequence, (g) => this.cluster[g]!) <= this.clusters;
  }
}
