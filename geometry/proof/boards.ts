import { num, type PicturePath } from './picture-path.ts';

const COLOURS = { pale: '#f0dab4', dark: '#8a6236', joint: '#4f3519', grain: '#8d6739' };
/** Widths of a head's boards, in shares of the whole: by eye. */
const BOARDS = [0.115, 0.15, 0.13, 0.165, 0.125, 0.17, 0.145];
/** Grain lines to a board. */
const LINES = 7;

/**
 * Boards of a round of wood about the origin, r mm: their tones, their grain and the joints between them. They stand
 * upright or lie level.
 */
export function boardPaths(r: number, way: 'upright' | 'level' = 'upright'): PicturePath[] {
  const at = (across: number, along: number) =>
    way === 'upright' ? `${num(across)} ${num(along)}` : `${num(along)} ${num(across)}`;
  const joints = jointsOf(r);
  const random = seeded(11);
  const tones: PicturePath[] = [];
  let [faint, strong, seams] = ['', '', ''];
  for (let b = 0; b < BOARDS.length; b++) {
    const [from, to] = [joints[b]!, joints[b + 1]!];
    const tone = random() - 0.5;
    tones.push({
      d: strip(r, from, to, at, way),
      fill: tone > 0 ? COLOURS.pale : COLOURS.dark,
      opacity: 0.08 + 0.3 * Math.abs(tone),
    });
    for (let k = 0; k < LINES; k++) {
      const across = from + ((to - from) * (k + 0.25 + 0.5 * random())) / LINES;
      const line = grainLine(r, { across, sway: (to - from) * 0.05, from, to }, random, at);
      if (random() < 0.4) strong += line;
      else faint += line;
    }
    if (b > 0) seams += seam(r, from, at);
  }
  return [
    ...tones,
    { d: faint, stroke: COLOURS.grain, width: r * 0.0022, opacity: 0.32 },
    { d: strong, stroke: COLOURS.grain, width: r * 0.0038, opacity: 0.34 },
    { d: seams, stroke: COLOURS.joint, width: r * 0.005, opacity: 0.85 },
  ];
}

function jointsOf(r: number): number[] {
  const total = BOARDS.reduce((sum, w) => sum + w, 0);
  let at = -r;
  return [-r, ...BOARDS.map((w) => (at += (w / total) * 2 * r))];
}

type At = (across: number, along: number) => string;

/** The part of the disc between two lines along the grain. */
function strip(r: number, from: number, to: number, at: At, way: 'upright' | 'level'): string {
  const half = (across: number) => Math.sqrt(Math.max(0, r * r - across * across));
  const sweep = way === 'upright' ? 1 : 0;
  const q = num(r);
  return (
    `M${at(from, -half(from))}A${q} ${q} 0 0 ${sweep} ${at(to, -half(to))}L${at(to, half(to))}` +
    `A${q} ${q} 0 0 ${sweep} ${at(from, half(from))}Z`
  );
}

function seam(r: number, across: number, at: At): string {
  const half = Math.sqrt(Math.max(0, r * r - across * across));
  return `M${at(across, -half)}L${at(across, half)}`;
}

interface Line {
  readonly across: number;
  readonly sway: number;
  readonly from: number;
  readonly to: number;
}

/** A gently swaying line that stays on its board and ends before the edge of the disc, often before that. */
function grainLine(r: number, { across, sway, from, to }: Line, random: () => number, at: At): string {
  const widest = Math.max(Math.abs(across - sway), Math.abs(across + sway));
  const half = Math.sqrt(Math.max(0, r * r - widest * widest)) - r * 0.004;
  if (!(half > r * 0.05)) return '';
  const begin = -half + (random() < 0.5 ? 0 : random() * half);
  const end = half - (random() < 0.5 ? 0 : random() * half);
  const steps = 4;
  const inside = (v: number) => Math.min(to - r * 0.006, Math.max(from + r * 0.006, v));
  const points = Array.from({ length: steps + 1 }, (_, i) => ({
    across: inside(across + (random() - 0.5) * 2 * sway),
    along: begin + ((end - begin) * i) / steps,
  }));
  const third = (end - begin) / steps / 3;
  return points
    .map((p, i) => {
      const before = points[i - 1];
      if (!before) return `M${at(p.across, p.along)}`;
      return `C${at(before.across, before.along + third)} ${at(p.across, p.along - third)} ${at(p.across, p.along)}`;
    })
    .join('');
}

/** Numbers from 0 to 1 that look random and are the same every time (a linear congruential generator, Numerical Recipes). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
