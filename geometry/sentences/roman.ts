import signs from './roman-signs.json' with { type: 'json' };

/** From the greatest down. */
const SIGNS = Object.entries(signs).map(([sign, worth]) => [worth, sign] as const);

/** A whole number from 1 to 3999 in roman numerals; other numbers in figures. */
export function toRoman(value: number): string {
  if (!Number.isInteger(value) || value < 1 || value > 3999) return String(value);
  let left = value;
  let out = '';
  for (const [worth, sign] of SIGNS) {
    while (left >= worth) {
      out += sign;
      left -= worth;
    }
  }
  return out;
}

/** The number, or undefined when it is not written as we would write it. */
export function fromRoman(text: string): number | undefined {
  const upper = text.toUpperCase();
  let rest = upper;
  let value = 0;
  for (const [worth, sign] of SIGNS) {
    while (rest.startsWith(sign)) {
      value += worth;
      rest = rest.slice(sign.length);
    }
  }
  return rest === '' && value > 0 && toRoman(value) === upper ? value : undefined;
}
