import type { Bridge, Island, Opening } from '../bridges/types.ts';
import type { Finding, Verdict } from '../findings.ts';
import type { Layout } from '../layout/placed.ts';
import type { Region } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';

/** What was measured on the finished plate. */
export interface PlateMeasures {
  readonly openings: number;
  readonly bridges: number;
  readonly islands: number;
  /** Narrowest bridge as built; absent when the plate needs none. */
  readonly leastBridgeMm?: number;
  /** Narrowest metal between two openings or an opening and the rim; absent when nothing is near. */
  readonly leastWebMm?: number;
  readonly leastOpeningMm?: number;
  readonly openAreaMm2: number;
  readonly metalAreaMm2: number;
  readonly massKg: number;
}

/** One plate of a design, worked out from layout to proof: plain data, the same from worker, command and tests. */
export interface PlateResult {
  readonly plateId: string;
  readonly name: string;
  readonly diameterMm: number;
  readonly quantity: number;
  readonly rules: StockRules;
  readonly layout: Layout;
  /** What would be cut without bridges. */
  readonly unbridged: readonly Region[];
  readonly openings: readonly Opening[];
  readonly bridges: readonly Bridge[];
  readonly islands: readonly Island[];
  readonly measures: PlateMeasures;
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
  /** The design's fingerprint, 64 hex digits. */
  readonly fingerprint: string;
}
