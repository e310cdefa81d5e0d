import type { Point } from '../../shapes.ts';

export interface TourGroup {
  /** Where it may be entered and left. At least one. */
  readonly points: readonly Point[];
  /** No other cluster is visited between groups of one cluster. */
  readonly cluster?: string;
}
