import drawn from './knots.json' with { type: 'json' };
import type { Knot } from './spline.ts';

/** Knots of a part of a motif that no setting changes. */
export function knotsOf(part: keyof typeof drawn): readonly Knot[] {
  return drawn[part].map(([x, y, corner]) =>
    corner === undefined ? [Number(x), Number(y)] : [Number(x), Number(y), 'corner'],
  );
}
