import fc from 'fast-check';

interface Change {
  readonly kind: 'flip' | 'set' | 'cut' | 'repeat' | 'insert' | 'word' | 'end' | 'number';
  /** Where, as a share of the length. */
  readonly at: number;
  readonly length: number;
  readonly byte: number;
  readonly word: string;
}

/** What readers stumble over: brackets, signs of other meanings, numbers at the edge. */
const WORDS = [
  '"', '{', '}', '[', ']', '[[[[', '\\u0000', '\\ud800', '__proto__', '"constructor":1,', '1e308', '-1e309', 'NaN', '-0',
  '99999999999999999999', '0.1e-400', '<', '>', '&', '<!DOCTYPE x [', '<use href="#u"/>', '</', '\u202e', '\ufeff', '=1+1',
  '\r\n', ';', '\t', 'PK\u0003\u0004', '\u0000\u0000', '\u00ff\u00ff\u00ff\u00ff', ',', ',,', ':', 'null', 'true',
]; // prettier-ignore

const change: fc.Arbitrary<Change> = fc.record({
  kind: fc.constantFrom('flip', 'set', 'cut', 'repeat', 'insert', 'word', 'end', 'number'),
  at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  length: fc.nat(64),
  byte: fc.nat(255),
  word: fc.constantFrom(...WORDS),
});

/** So many lists of changes; the same seed gives the same. */
export function changesOf(seed: number, count: number): readonly (readonly Change[])[] {
  return fc.sample(fc.array(change, { minLength: 1, maxLength: 4 }), { seed, numRuns: count });
}

export function mutate(bytes: Uint8Array, changes: readonly Change[]): Uint8Array {
  return changes.reduce(changed, bytes);
}

function changed(bytes: Uint8Array, { kind, at, length, byte, word }: Change): Uint8Array {
  const i = Math.floor(at * bytes.length);
  const [before, behind] = [bytes.subarray(0, i), bytes.subarray(Math.min(bytes.length, i + length))];
  switch (kind) {
    case 'flip':
      return joined(before, Uint8Array.of((bytes[i] ?? 0) ^ (1 << (byte & 7))), bytes.subarray(i + 1));
    case 'set':
      return joined(before, Uint8Array.of(byte), bytes.subarray(i + 1));
    case 'cut':
      return joined(before, behind);
    case 'repeat':
      return joined(
        before,
        ...Array.from({ length: 1 + (byte & 15) }, () => bytes.subarray(i, i + length)),
        bytes.subarray(i),
      );
    case 'insert':
      return joined(before, new Uint8Array(length).fill(byte), bytes.subarray(i));
    case 'word':
      return joined(before, new TextEncoder().encode(word), bytes.subarray(i));
    case 'number': {
      // the next number of a text becomes one at the edge
      const from = bytes.findIndex((b, k) => k >= i && b >= 48 && b <= 57);
      if (from < 0) return bytes;
      let to = from;
      while (to < bytes.length && bytes[to]! >= 46 && bytes[to]! <= 57) to++;
      const numbers = ['1e300', '-1', '0', '1e-300', '123456789', '4294967296', '0.5'];
      return joined(
        bytes.subarray(0, from),
        new TextEncoder().encode(numbers[byte % numbers.length]),
        bytes.subarray(to),
      );
    }
    case 'end':
      return before;
  }
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((n, p) => n + p.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
