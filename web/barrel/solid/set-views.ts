import type { Eye } from './eye.ts';
import type { BarrelMeasures } from './measures.ts';
import type { Pose } from './pose.ts';

export type ViewName = 'straight' | 'quarter' | 'above' | 'close';
export const VIEW_NAMES: readonly ViewName[] = ['straight', 'quarter', 'above', 'close'];

/** One barrel as it is placed in the picture: `x` mm to the right of the middle. */
export interface Placed {
  readonly barrel: BarrelMeasures;
  readonly pose: Pose;
  readonly x: number;
  readonly y: number;
  readonly plateRadiusMm: number;
}

/** The four views one can go back to, for one barrel or two side by side; all about the heads, where the lettering is. */
export function setView(name: ViewName, placed: readonly Placed[]): Eye {
  const wide = Math.max(...placed.map((p) => Math.abs(p.x) + p.pose.halfWidthMm));
  const high = Math.max(...placed.map((p) => p.pose.halfHeightMm));
  const front = high;
  const ratio = wide / front;
  switch (name) {
    case 'straight':
      return { turn: 0, rise: 0, at: [0, 0, 0], reachMm: front * 1.08, wide: ratio };
    case 'quarter':
      return { turn: 31, rise: 14, at: [0, 0, 0], reachMm: front * 1.4, wide: ratio * 1.1 };
    case 'above':
      return { turn: 10, rise: 48, at: [0, 0, 0], reachMm: front * 1.95, wide: ratio };
    case 'close': {
      const [first] = placed;
      return {
        turn: -20,
        rise: 12,
        at: [first?.x ?? 0, first?.y ?? 0, 0],
        wide: 1,
        reachMm: Math.max(40, (first?.plateRadiusMm ?? front / 2) * 0.62),
      };
    }
  }
}
