const SIGNS: readonly (readonly [number, string])[] = [
  [1000, 'M'],
  [900, 'CM'],
  [500, 'D'],
  [400, 'CD'],
  [100, 'C'],
  [90, 'XC'],
  [50, 'L'],
  [40, 'XL'],
  [10, 'X'],
  [9, 'IX'],
  [5, 'V'],
  [4, 'IV'],
  [1, 'I'],
];

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
