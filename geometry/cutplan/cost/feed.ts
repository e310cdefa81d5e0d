/**
 * How long a machine takes for a run of lines and arcs, from rest to rest.
 *
 * In: a run in mm and what the machine can do. Out: its length and time, and where it is how fast.
 *
 * 1. Each line or arc has a greatest speed: the feed, and on an arc what its centripetal acceleration allows,
 *    v^2 / r <= a.
 * 2. Where two meet at an angle the head may cut the corner short by cornerMm: it then runs an arc that touches both
 *    sides and passes the corner at that distance. For a turn by t (0 straight on) the arc's radius is
 *    r = cornerMm cos(t/2) / (1 - cos(t/2)), and it leaves each side r tan(t/2) before the corner, which may be no more
 *    than half the way to where the path has turned by TURN_SHARE of t again. Its speed is that of any arc. (Geometry; that controllers slow down by
 *    such an arc is common practice, no source.) A side that is taken up by such arcs from both ends is run no faster
 *    than they are: many short chords take the time of the arc they stand for.
 * 3. Look-ahead: forwards no joint is faster than the acceleration allows from the one before, backwards than the
 *    braking to the one after: v1^2 = v0^2 + 2 a s.
 * 4. Between two joints it speeds up, runs evenly and brakes (a trapezoid of speed over time), or turns from speeding
 *    up to braking before the feed is reached (a triangle).
 *
 * Acceleration counts along the path; that an axis could do more at a slant, or has less left in a bend, is left out.
 */
import { arcOf } from '../../measure/arc.ts';
import { SAME_WAY_RAD } from '../../units.ts';
import type { CutSettings, Run } from '../sheet-plan.ts';

/** What of the settings a run is timed by. */
export type Motion = Pick<CutSettings, 'feedMmMin' | 'accelerationMmS2' | 'cornerMm'>;

/** A moment of a run; from one to the next the acceleration is even. */
export interface Moment {
  readonly mm: number;
  readonly s: number;
  /** mm/s. */
  readonly speed: number;
}

export interface TimedRun {
  readonly lengthMm: number;
  readonly seconds: number;
  readonly moments: readonly Moment[];
}

/** Times a run; at each of stopsMm (ascending, along the run) it comes to rest as well. */
export function timeRun(run: Run, motion: Motion, stopsMm: readonly number[] = []): TimedRun {
  const { pieces, speeds } = limitSpeeds(splitAtStops(piecesOf(run, motion), stopsMm), motion);
  const a = motion.accelerationMmS2;
  const moments: Moment[] = [{ mm: 0, s: 0, speed: 0 }];
  pieces.forEach((piece, i) => {
    const [v0, v1] = [speeds[i]!, speeds[i + 1]!];
    const peak = Math.min(piece.mostSpeed, Math.sqrt((v0 * v0 + v1 * v1) / 2 + a * piece.lengthMm));
    const { mm, s } = moments.at(-1)!;
    const [upMm, downMm] = [(peak * peak - v0 * v0) / (2 * a), (peak * peak - v1 * v1) / (2 * a)];
    const evenMm = Math.max(0, piece.lengthMm - upMm - downMm);
    const upS = s + (peak - v0) / a;
    const evenS = upS + (evenMm > 0 ? evenMm / peak : 0);
    if (upMm > 0) moments.push({ mm: mm + upMm, s: upS, speed: peak });
    if (evenMm > 0) moments.push({ mm: mm + upMm + evenMm, s: evenS, speed: peak });
    if (downMm > 0) moments.push({ mm: mm + piece.lengthMm, s: evenS + (peak - v1) / a, speed: v1 });
  });
  const { mm, s } = moments.at(-1)!;
  return { lengthMm: mm, seconds: s, moments };
}

/** How far along the run the head is after so many seconds. */
export function mmAt({ moments, lengthMm }: TimedRun, seconds: number): number {
  const next = moments.findIndex((m) => m.s >= seconds);
  if (next < 0) return lengthMm;
  if (next === 0) return 0;
  const [from, to] = [moments[next - 1]!, moments[next]!];
  const [t, whole] = [seconds - from.s, to.s - from.s];
  return from.mm + from.speed * t + ((to.speed - from.speed) * t * t) / (2 * whole);
}

/** When the head is so far along the run: what mmAt turns round. */
export function secondsAt({ moments, seconds }: TimedRun, mm: number): number {
  let [low, high] = [0, moments.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (moments[middle]!.mm >= mm) high = middle;
    else low = middle + 1;
  }
  if (low >= moments.length) return seconds;
  if (low === 0) return 0;
  const [from, to] = [moments[low - 1]!, moments[low]!];
  const a = (to.speed - from.speed) / (to.s - from.s);
  const left = mm - from.mm;
  // of left = v t + a t^2 / 2 the root that is also good for a = 0
  return from.s + (2 * left) / (from.speed + Math.sqrt(Math.max(0, from.speed ** 2 + 2 * a * left)));
}

interface Piece {
  readonly lengthMm: number;
  readonly mostSpeed: number;
  /** Direction at its two ends, radians counter-clockwise from x. */
  readonly startRad: number;
  readonly endRad: number;
  /** It comes to rest where this piece ends. */
  readonly stops: boolean;
}

function piecesOf(run: Run, { feedMmMin, accelerationMmS2 }: Motion): Piece[] {
  const feed = feedMmMin / 60;
  const pieces: Piece[] = [];
  for (let i = 0; i + 1 < run.length; i++) {
    const [a, b] = [run[i]!, run[i + 1]!];
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    if (chord === 0) continue;
    const chordRad = Math.atan2(b.y - a.y, b.x - a.x);
    const arc = arcOf(a, b);
    // An arc leaves its chord by half of its sweep, and comes back to it by the other half.
    const half = arc ? arc.sweepRad / 2 : 0;
    pieces.push({
      lengthMm: arc ? arc.radiusMm * Math.abs(arc.sweepRad) : chord,
      mostSpeed: arc ? Math.min(feed, Math.sqrt(accelerationMmS2 * arc.radiusMm)) : feed,
      startRad: chordRad - half,
      endRad: chordRad + half,
      stops: false,
    });
  }
  return pieces;
}

/** Where it stops within a piece, the piece becomes two. The direction there no longer matters. */
function splitAtStops(pieces: readonly Piece[], stopsMm: readonly number[]): Piece[] {
  if (stopsMm.length === 0) return [...pieces];
  const out: Piece[] = [];
  let [before, next] = [0, 0];
  for (const piece of pieces) {
    let left = piece;
    for (; next < stopsMm.length && stopsMm[next]! <= before + left.lengthMm; next++) {
      const mm = stopsMm[next]! - before;
      if (mm <= 0) continue;
      out.push({ ...left, lengthMm: mm, stops: true });
      left = { ...left, lengthMm: left.lengthMm - mm };
      before += mm;
    }
    if (left.lengthMm > 0) out.push(left);
    before += left.lengthMm;
  }
  return out;
}

/** The pieces with what corners leave of their speed, and the speeds at the start, at each joint and at the end. */
function limitSpeeds(
  all: readonly Piece[],
  { accelerationMmS2: a, cornerMm }: Motion,
): { pieces: Piece[]; speeds: number[] } {
  const turns = all.map((p, i) => turnRad(p, all[i + 1]));
  const corners = all.map((piece, i): Corner => {
    if (piece.stops || i + 1 === all.length) return REST;
    const turn = turns[i]!;
    if (turn < SAME_WAY_RAD) return STRAIGHT;
    return cornerOf(turn, cornerMm, Math.min(reachMm(all, turns, i, -1, turn), reachMm(all, turns, i, 1, turn)));
  });
  const pieces = all.map((piece, i): Piece => {
    const [before, after] = [corners[i - 1] ?? REST, corners[i]!];
    if (before.takesMm + after.takesMm < TAKEN_SHARE * piece.lengthMm) return piece;
    return { ...piece, mostSpeed: Math.min(piece.mostSpeed, Math.sqrt(a * Math.max(before.radiusMm, after.radiusMm))) };
  });
  const speeds = pieces.map((piece, i) =>
    Math.min(piece.mostSpeed, pieces[i + 1]?.mostSpeed ?? 0, Math.sqrt(a * corners[i]!.radiusMm)),
  );
  speeds.unshift(0);
  for (let i = 0; i < pieces.length; i++) {
    speeds[i + 1] = Math.min(speeds[i + 1]!, Math.sqrt(speeds[i]! ** 2 + 2 * a * pieces[i]!.lengthMm));
  }
  for (let i = pieces.length - 1; i >= 0; i--) {
    speeds[i] = Math.min(speeds[i]!, Math.sqrt(speeds[i + 1]! ** 2 + 2 * a * pieces[i]!.lengthMm));
  }
  return { pieces, speeds };
}

/** A side is run as arcs where they take so much of it: all of it, as rounding leaves it. */
const TAKEN_SHARE = 0.99;

/** The arc that cuts a corner short. */
interface Corner {
  /** Infinity straight on, 0 where the head comes to rest. */
  readonly radiusMm: number;
  /** Of the path on either side. */
  readonly takesMm: number;
}

const REST: Corner = { radiusMm: 0, takesMm: 0 };
const STRAIGHT: Corner = { radiusMm: Infinity, takesMm: 0 };

/**
 * How much of its own turn the path may bend beside a corner for the corner to be one by itself. Under one, so that the
 * next of many equal chords is a corner again; not much under, so that a fine bend beside a sharp corner is none.
 */
const TURN_SHARE = 0.75;

/** Way from the joint after piece i, forwards or backwards, to where the path has turned by so much. */
function reachMm(pieces: readonly Piece[], turns: readonly number[], joint: number, way: 1 | -1, turn: number): number {
  let [mm, left] = [0, TURN_SHARE * turn];
  for (let i = way === 1 ? joint + 1 : joint; i >= 0 && i < pieces.length; i += way) {
    const { lengthMm, startRad, endRad } = pieces[i]!;
    const bend = Math.abs(endRad - startRad);
    if (bend > left) return mm + (lengthMm * left) / bend;
    mm += lengthMm;
    left -= bend + (turns[way === 1 ? i : i - 1] ?? Math.PI);
    if (left < 0 || (way === 1 ? pieces[i]! : pieces[i - 1])?.stops) return mm;
  }
  return mm;
}

function turnRad(piece: Piece, next: Piece | undefined): number {
  if (!next) return Math.PI;
  const turn = Math.abs(next.startRad - piece.endRad) % (2 * Math.PI);
  return Math.min(turn, 2 * Math.PI - turn);
}

function cornerOf(turn: number, cornerMm: number, roomMm: number): Corner {
  // A turn on the spot would leave a cosine of rounding in place of none.
  if (Math.PI - turn < SAME_WAY_RAD) return REST;
  const [cos, tan] = [Math.cos(turn / 2), Math.tan(turn / 2)];
  const radiusMm = Math.min((cornerMm * cos) / (1 - cos), roomMm / 2 / tan);
  return { radiusMm, takesMm: radiusMm * tan };
}
