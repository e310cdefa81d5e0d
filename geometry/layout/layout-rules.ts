/** What layout must know of the stock; the rules of geometry/stock have it all. Millimetres. */
export interface LayoutRules {
  /** Least metal between two openings. */
  readonly leastWebMm: number;
  /** No bridge may be narrower. */
  readonly leastBridgeMm: number;
  /** Narrowest opening the process can cut. */
  readonly leastOpeningMm: number;
}
