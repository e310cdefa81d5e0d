import type { Stiffness } from './elastic.ts';

/** What one stock (material, thickness, process, use) asks of every plate cut from it. All millimetres. */
export interface StockRules {
  /** Width of the cut itself. */
  readonly kerfMm: number;
  /** No bridge and no neck of metal may be narrower. */
  readonly leastBridgeMm: number;
  /** Least metal between two openings. */
  readonly leastWebMm: number;
  /** Narrowest opening the process can cut. */
  readonly leastOpeningMm: number;
  /** Inside corners come out with at least this radius. */
  readonly leastInsideRadiusMm: number;
  /** Least metal between an opening and the rim. */
  readonly rimMarginMm: number;
  /** Farthest that an island's edge may run between two bridges. */
  readonly longestSpanMm: number;
  readonly thicknessMm: number;
  /** How islands may bend; absent where that is not judged (film). */
  readonly stiffness?: Stiffness;
}
