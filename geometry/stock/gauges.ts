import { MM_PER_INCH } from '../units.ts';
import ounces from './gauge-ounces.json' with { type: 'json' };

/**
 * Three systems share the word gauge and mean different sheets; 16 gauge is 0.0625 in of stainless,
 * 0.0598 in of carbon steel and 0.0508 in of aluminium. Each is made here from its own law:
 *
 * stainless  US Standard Gauge, ounces per square foot / 640 (15 U.S.C. 206, which lays down the weights)
 * carbon     Manufacturers' Standard, pounds per square foot / 41.82 (the same weights; trade texts)
 * aluminium  Brown & Sharpe, 0.005 x 92^((36 - n) / 39) (ASTM B258)
 */
export type GaugeSystem = 'stainless' | 'carbon' | 'aluminium';

/** Weights of 15 U.S.C. 206, ounces per square foot; from 21 gauge on from the same rule, from memory. */
const OUNCES: Readonly<Record<number, number>> = ounces;

/** Thickness of a gauge in inches; undefined outside 10 to 26. */
export function gaugeInches(system: GaugeSystem, gauge: number): number | undefined {
  const ounces = OUNCES[gauge];
  if (ounces === undefined) return undefined;
  if (system === 'stainless') return ounces / 640;
  if (system === 'carbon') return ounces / 16 / 41.82;
  return 0.005 * 92 ** ((36 - gauge) / 39);
}

/** Thickness of a gauge in millimetres; undefined outside 10 to 26. */
export function gaugeMm(system: GaugeSystem, gauge: number): number | undefined {
  const inches = gaugeInches(system, gauge);
  return inches === undefined ? undefined : inches * MM_PER_INCH;
}
