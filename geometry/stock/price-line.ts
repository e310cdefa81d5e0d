import { toMinor } from './money.ts';

/** count of the unit at each; minor: coins, rounded once. */
export interface PricedLine<Code extends string, Unit extends string> {
  readonly code: Code;
  readonly count: number;
  readonly unit: Unit;
  /** In the currency, not in its coins. */
  readonly each: number;
  readonly minor: number;
}

export interface QuantityStep {
  readonly from: number;
  readonly percentOff: number;
}

export function priceLine<Code extends string, Unit extends string>(
  code: Code,
  count: number,
  unit: Unit,
  each: number,
  currency: string,
): PricedLine<Code, Unit> {
  return { code, count, unit, each, minor: toMinor(count * each, currency) };
}

export function sumMinor(lines: readonly { readonly minor: number }[]): number {
  return lines.reduce((sum, line) => sum + line.minor, 0);
}

/** What the step with the most plates that an order reaches takes off these lines, as a line; none where it takes nothing. */
export function listQuantityOff(
  lines: readonly { readonly minor: number }[],
  steps: readonly QuantityStep[],
  plates: number,
  currency: string,
): PricedLine<'quantity', 'per-cent'>[] {
  const reached = steps.filter((step) => step.from <= plates);
  const { percentOff } = reached.reduce((best, step) => (step.from > best.from ? step : best), {
    from: 0,
    percentOff: 0,
  });
  if (percentOff <= 0) return [];
  return [priceLine('quantity', percentOff, 'per-cent', -sumMinor(lines) / toMinor(1, currency) / 100, currency)];
}
