import digits from './minor-digits.json' with { type: 'json' };

/** Currencies and units of account that have no two decimals (ISO 4217, from memory); all others have two. */
const MINOR_DIGITS: Readonly<Record<string, number>> = digits;

/** Decimals of a currency's smallest coin. */
export function minorDigits(currency: string): number {
  return Object.hasOwn(MINOR_DIGITS, currency) ? MINOR_DIGITS[currency]! : 2;
}

/** An amount of a currency as a whole number of its smallest coins, halves away from zero. */
export function toMinor(amount: number, currency: string): number {
  // Twelve digits: 1.005 x 100 is 100.49999999999999 as the machine counts, and means 100.5.
  const coins = Number((Math.abs(amount) * 10 ** minorDigits(currency)).toPrecision(12));
  return Math.sign(amount) * Math.floor(coins + 0.5) || 0;
}
