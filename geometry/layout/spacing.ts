import { createCache, memoize } from '../cache.ts';
import type { Face } from '../adapters/face.ts';
import { ringsGap } from '../measure/distance.ts';
import { WEB_SPARE_MM } from '../units.ts';
import type { Letter, SizedGlyph } from './letters.ts';
import { placeRings } from './rail.ts';
import type { Rail } from './rail.ts';

/**
 * Where the letters of a text stand along a rail.
 *
 * In: letters at their size, a rail, the wish. Out: the middle of each letter's advance along the rail, the
 * middle of the ink at 0. Promised: the metal between two letters is at least leastWebMm (measured between
 * their true outlines where they stand), except in faces whose letters join. Not promised: that a span is kept
 * when the letters need more.
 *
 * 1. The natural distance of each pair: half of both advances and the kerning.
 * 2. The least distance of each pair: where the web is just kept.
 * 3. One amount added to all pairs meets the span; no pair goes under its least distance.
 * 4. Letters that are not neighbours (across a thin letter or a space) are looked at as well.
 */
export interface SpacingWish {
  readonly emMm: number;
  readonly capMm: number;
  readonly trackingMm: number;
  /** Length of the ink along the rail; absent: natural. */
  readonly spanMm?: number;
  /** Length of a rail that closes on itself and is to be filled evenly all round. */
  readonly closedMm?: number;
  readonly leastWebMm: number;
}

export interface Spacing {
  readonly atMm: readonly number[];
  /** Ink from and to, along the rail. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Greatest distance that two letters had to be moved apart to keep the web, and the number of the second one. */
  readonly spreadMm: number;
  readonly spreadAt: number;
  /** The span is too short for the letters: they take more. */
  readonly overSpan: boolean;
}

export function spaceLetters(letters: readonly Letter[], face: Face, rail: Rail, wish: SpacingWish): Spacing {
  const closed = wish.closedMm !== undefined;
  const pairs = pairsOf(letters, face, rail, wish, closed);
  const reaches = letters.map((letter) => reachOf(letter, rail));
  const first = reaches.find((reach) => reach !== undefined);
  const last = reaches.findLast((reach) => reach !== undefined);
  if (!first || !last)
    return { atMm: letters.map(() => 0), fromMm: 0, toMm: 0, spreadMm: 0, spreadAt: 0, overSpan: false };

  // A closed rail counts the distance from the last letter to the first; otherwise the ink of both ends counts.
  const target = wish.closedMm ?? (wish.spanMm === undefined ? undefined : wish.spanMm - (last.to - first.from));
  const { extra, over } = extraFor(pairs, target);

  const at = [0];
  let spreadMm = 0;
  let spreadAt = 0;
  pairs.slice(0, letters.length - 1).forEach((pair, i) => {
    const taken = Math.max(pair.naturalMm + extra, pair.leastMm);
    // A span that squeezes is a wish of its own: only what the web rule asks beyond the natural distance is spread.
    const wished = pair.naturalMm + Math.max(0, extra);
    if (taken - wished > spreadMm && pair.webbed) [spreadMm, spreadAt] = [taken - wished, i + 1];
    at.push((at[i] ?? 0) + taken);
  });

  const far = face.joins
    ? { mm: 0, index: 0 }
    : partFarLetters(letters, reaches, at, rail, wish.leastWebMm + WEB_SPARE_MM);
  if (far.mm > spreadMm) [spreadMm, spreadAt] = [far.mm, far.index];

  let [from, to] = [Infinity, -Infinity];
  reaches.forEach((reach, i) => {
    if (!reach) return;
    from = Math.min(from, (at[i] ?? 0) + reach.from);
    to = Math.max(to, (at[i] ?? 0) + reach.to);
  });
  const middle = (from + to) / 2;
  return {
    atMm: at.map((mm) => mm - middle),
    fromMm: from - middle,
    toMm: to - middle,
    spreadMm,
    spreadAt,
    overSpan: over || (far.mm > 0 && target !== undefined),
  };
}

/** Metal between two letters at their places along a rail, when it is less than withinMm. */
export function gapAlong(
  rail: Rail,
  left: Letter,
  right: Letter,
  apartMm: number,
  withinMm: number,
): number | undefined {
  if (!left.glyph || !right.glyph) return undefined;
  const a = placeRings(left.glyph.rings, rail.place(0, left.advanceMm));
  const b = placeRings(right.glyph.rings, rail.place(apartMm, right.advanceMm));
  return ringsGap(a, b, withinMm)?.mm;
}

interface Pair {
  /** With kerning and tracking. */
  readonly naturalMm: number;
  readonly leastMm: number;
  /** leastMm comes from the web rule. */
  readonly webbed: boolean;
}

/** A span may take at most this much, in heights of a capital, out of each distance; beside a space less. */
const GREATEST_SQUEEZE = 0.25;
const GREATEST_SQUEEZE_AT_SPACE = 0.1;

function pairsOf(letters: readonly Letter[], face: Face, rail: Rail, wish: SpacingWish, closed: boolean): Pair[] {
  const squeezes = wish.spanMm !== undefined || closed || wish.trackingMm < 0;
  return letters.slice(0, closed ? letters.length : letters.length - 1).map((left, i) => {
    const right = letters[(i + 1) % letters.length] ?? left;
    const plainMm = (left.advanceMm + right.advanceMm) / 2 + face.kern(left.char, right.char) * wish.emMm;
    const naturalMm = plainMm + wish.trackingMm;
    const both = left.glyph && right.glyph;
    if (both && (left.joins ?? right.joins)) {
      // Evenly by the ink: what is small between two initials is as near to the one as to the other.
      const inkMm = (reachOf(left, rail)?.to ?? 0) - (reachOf(right, rail)?.from ?? 0);
      return { naturalMm: inkMm + wish.trackingMm, leastMm: inkMm + wish.leastWebMm + WEB_SPARE_MM, webbed: true };
    }
    const least = plainMm - (both ? GREATEST_SQUEEZE : GREATEST_SQUEEZE_AT_SPACE) * wish.capMm;
    if (!both || face.joins) return { naturalMm, leastMm: Math.min(naturalMm, least), webbed: false };
    // Looked for from the left: from where the letters would certainly not have passed through each other.
    const startMm = squeezes ? Math.max(0.6 * plainMm, least) : plainMm;
    const leastMm = leastApart(face, rail, left, right, startMm, wish.leastWebMm + WEB_SPARE_MM);
    return { naturalMm, leastMm, webbed: true };
  });
}

/** The one amount to add to every distance. Distances only grow with it, so halving finds it. */
function extraFor(pairs: readonly Pair[], target: number | undefined): { extra: number; over: boolean } {
  if (target === undefined || pairs.length === 0) return { extra: 0, over: false };
  const total = (extra: number) => pairs.reduce((sum, p) => sum + Math.max(p.naturalMm + extra, p.leastMm), 0);
  let low = Math.min(...pairs.map((p) => p.leastMm - p.naturalMm), 0);
  // The natural distances may be negative in sum only in absurd faces; then the span is simply met from above.
  let high = Math.max(0, target) + Math.abs(total(0));
  if (total(low) > target) return { extra: low, over: true };
  for (let i = 0; i < 80 && low < high; i++) {
    const middle = (low + high) / 2;
    if (total(middle) > target) high = middle;
    else low = middle;
  }
  return { extra: low, over: false };
}

interface Reach {
  readonly from: number;
  readonly to: number;
}

/** How far a letter's ink reaches along the rail, from the middle of its advance. */
function reachOf(letter: Letter, rail: Rail): Reach | undefined {
  if (!letter.glyph) return undefined;
  let [from, to] = [Infinity, -Infinity];
  for (const ring of placeRings(letter.glyph.rings, rail.place(0, letter.advanceMm))) {
    for (const p of ring) {
      const mm = rail.along(p);
      if (mm < from) from = mm;
      if (mm > to) to = mm;
    }
  }
  return from <= to ? { from, to } : undefined;
}

/** Letters up to three apart, neighbours left out: pushes later ones on in `at`; gives the greatest push. */
function partFarLetters(
  letters: readonly Letter[],
  reaches: readonly (Reach | undefined)[],
  at: number[],
  rail: Rail,
  needMm: number,
): { mm: number; index: number } {
  let greatest = { mm: 0, index: 0 };
  for (let i = 2; i < letters.length; i++) {
    for (let j = Math.max(0, i - 4); j < i - 1; j++) {
      const [left, right, from, to] = [letters[j], letters[i], reaches[i]?.from, reaches[j]?.to];
      if (!left || !right || from === undefined || to === undefined) continue;
      const apart = (at[i] ?? 0) - (at[j] ?? 0);
      if ((apart + from - to) * rail.tightest > needMm) continue;
      const needed = pushApart(rail, left, right, apart, needMm);
      if (needed === apart) continue;
      for (let k = i; k < at.length; k++) at[k] = (at[k] ?? 0) + needed - apart;
      if (needed - apart > greatest.mm) greatest = { mm: needed - apart, index: i };
    }
  }
  return greatest;
}

/** Least distances already found. */
const distancesOf = memoize((_face: Face) => createCache<number>(10_000));

function leastApart(face: Face, rail: Rail, left: Letter, right: Letter, startMm: number, needMm: number): number {
  const key = `${keyOf(left.glyph)}${keyOf(right.glyph)}|${rail.key}|${startMm}|${needMm}`;
  return distancesOf(face).getOrMake(key, () => pushApart(rail, left, right, startMm, needMm));
}

/**
 * Smallest distance from startMm on at which the web is kept. A letter moved by d changes the gap by at most d;
 * on a ring its far end moves more than d along the rail, by at most one part in rail.tightest. So steps of what
 * is lacking, times that, never go too far.
 */
function pushApart(rail: Rail, left: Letter, right: Letter, startMm: number, needMm: number): number {
  let apart = startMm;
  for (let i = 0; i < MOST_STEPS; i++) {
    const gap = gapAlong(rail, left, right, apart, needMm);
    if (gap === undefined) break;
    apart += Math.max((needMm - gap) * rail.tightest, LEAST_STEP_MM);
  }
  return apart;
}

const LEAST_STEP_MM = WEB_SPARE_MM / 10;
/** Letters about the very centre may never come free; the findings say that they overlap. */
const MOST_STEPS = 600;

function keyOf(glyph: SizedGlyph | undefined): string {
  return glyph?.storeKey ?? '';
}
