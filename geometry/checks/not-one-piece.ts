import type { Finding } from '../findings.ts';
import type { Point } from '../shapes.ts';
import { said } from '../sentences/say.ts';

/** What the proof says of a place where metal would fall out or hangs by less than a bridge. */
export function notOnePiece(at: Point, leastBridgeMm: number): Finding {
  return {
    code: 'not-one-piece',
    severity: 'stop',
    place: { kind: 'point', at, radiusMm: 2 * leastBridgeMm },
    elementIds: [],
    limitMm: leastBridgeMm,
    ...said('findings.notOnePiece'),
  };
}
