import type { Lying } from '../barrel/surface-of.ts';
import type { Bridge, Island, Opening } from '../bridges/types.ts';
import type { Design, PlateSpec } from '../design/schema.ts';
import type { Layout } from '../layout/placed.ts';
import type { Region } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import type { StockBook } from '../stock/stock-book.ts';

/** Everything that is known about one plate once it is bridged; checks take what they need of it. */
export interface CheckInput {
  readonly design: Design;
  readonly plate: PlateSpec;
  readonly diameterMm: number;
  /** What the plate lies on, or why it cannot. */
  readonly lying: Lying;
  readonly rules: StockRules;
  /** The shop's, which the rules come from. */
  readonly book: StockBook;
  readonly layout: Layout;
  readonly openings: readonly Opening[];
  readonly bridges: readonly Bridge[];
  readonly islands: readonly Island[];
  /** What would be cut without bridges. */
  readonly unbridged: readonly Region[];
}
