import type { Point } from '../../shapes.ts';

/** A mark: where it should be, and where it was found. */
export interface MeasuredMark {
  readonly at: Point;
  readonly found: Point;
}

/** A move in the plane: a point goes to about + shift + scale * turned(point - about). Millimetres. */
export interface Move {
  /** The point that shift is said of. */
  readonly about: Point;
  readonly shift: Point;
  /** Counter-clockwise, degrees. */
  readonly turnDeg: number;
  /** 1 unless it was asked for. */
  readonly scale: number;
}

/** How measured marks lie to their places. */
export interface Registration extends Move {
  /** What is left at each mark: found less the fitted place. */
  readonly residuals: readonly Point[];
  /** Mean of the squared lengths of the residuals, mm2. */
  readonly meanSquareMm2: number;
  /** Standard error of one measured coordinate, as given, or as the residuals show it; absent when neither says. */
  readonly noiseMm?: number;
  /** Standard errors that follow from it; the shift's for each of its two coordinates. */
  readonly errors?: { readonly shiftMm: number; readonly turnDeg: number };
}

export interface RegistrationWishes {
  /** Where the shift is said; usual: the origin. */
  readonly about?: Point;
  /** The sheet may also have grown or shrunk. */
  readonly scaled?: boolean;
  /** Standard uncertainty of one measured coordinate, mm. */
  readonly noiseMm?: number;
}

/**
 * Shift and turn (and scale) that bring marks nearest to where they were found, by least squares. Undefined for fewer
 * than two marks, or marks all at one place.
 *
 * Umeyama, "Least-squares estimation of transformation parameters between two point patterns", IEEE Trans. PAMI 13
 * (1991) 376-380. In the plane its singular values need not be worked out: among proper turns (determinant +1, what the
 * paper guards for) the best has the angle whose tangent is the sum of cross products over the sum of dot products.
 */
export function register(marks: readonly MeasuredMark[], wishes: RegistrationWishes = {}): Registration | undefined {
  const n = marks.length;
  if (n < 2) return undefined;
  const from = middleOf(marks.map((m) => m.at));
  const to = middleOf(marks.map((m) => m.found));
  let [dot, cross, spread] = [0, 0, 0];
  for (const { at, found } of marks) {
    const [ax, ay, bx, by] = [at.x - from.x, at.y - from.y, found.x - to.x, found.y - to.y];
    dot += ax * bx + ay * by;
    cross += ax * by - ay * bx;
    spread += ax * ax + ay * ay;
  }
  if (spread === 0) return undefined;
  const turnRad = Math.atan2(cross, dot);
  const scale = wishes.scaled ? Math.hypot(dot, cross) / spread : 1;
  const about = wishes.about ?? { x: 0, y: 0 };
  const turnDeg = (turnRad * 180) / Math.PI;
  const fromAbout = moveBy({ about: from, shift: { x: to.x - from.x, y: to.y - from.y }, turnDeg, scale }, about);
  const move = { about, shift: { x: fromAbout.x - about.x, y: fromAbout.y - about.y }, turnDeg, scale };
  const residuals = marks.map(({ at, found }) => {
    const fitted = moveBy(move, at);
    return { x: found.x - fitted.x, y: found.y - fitted.y };
  });
  const squares = residuals.reduce((sum, r) => sum + r.x * r.x + r.y * r.y, 0);
  // Two coordinates a mark, less what was fitted.
  const free = 2 * n - (wishes.scaled ? 4 : 3);
  const noiseMm = wishes.noiseMm ?? (free > 0 ? Math.sqrt(squares / free) : undefined);
  const far2 = (about.x - from.x) ** 2 + (about.y - from.y) ** 2;
  return {
    ...move,
    residuals,
    meanSquareMm2: squares / n,
    ...(noiseMm !== undefined && {
      noiseMm,
      // The middle of the marks is known to noise / sqrt(n), the turn about it to noise / sqrt(spread): independent.
      errors: {
        shiftMm: noiseMm * Math.sqrt(1 / n + far2 / spread),
        turnDeg: ((noiseMm / Math.sqrt(spread)) * 180) / Math.PI,
      },
    }),
  };
}

/** Where a move takes a point. */
export function moveBy({ about, shift, turnDeg, scale }: Move, p: Point): Point {
  const rad = (turnDeg * Math.PI) / 180;
  const [c, s] = [scale * Math.cos(rad), scale * Math.sin(rad)];
  return {
    x: about.x + shift.x + c * (p.x - about.x) - s * (p.y - about.y),
    y: about.y + shift.y + s * (p.x - about.x) + c * (p.y - about.y),
  };
}

function middleOf(points: readonly Point[]): Point {
  return {
    x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
    y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
  };
}
