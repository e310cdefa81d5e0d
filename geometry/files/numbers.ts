import { FILE_DECIMALS } from '../units.ts';

/**
 * The one way a number enters a file: rounded to FILE_DECIMALS, no exponent, no -0, no trailing zeros.
 * Throws RangeError on NaN, Infinity and numbers too large to keep the decimals: a wrong number must never reach a machine.
 */
export function fileNumber(value: number, what = 'number'): string {
  return decimal(value, FILE_DECIMALS, what);
}

/** A bulge is a pure ratio times a chord of up to metres: it needs more places than a length to be as exact. */
const BULGE_DECIMALS = 10;

export function fileBulge(value: number): string {
  return decimal(value, BULGE_DECIMALS, 'bulge');
}

function decimal(value: number, places: number, what: string): string {
  // Above 1e9 a double no longer holds these places and toFixed would turn to exponents in the end.
  if (!Number.isFinite(value) || Math.abs(value) > 1e9) throw new RangeError(`${what} for a file is ${value}`);
  const fixed = value.toFixed(places);
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return short === '-0' || short === '' ? '0' : short;
}
