import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { lineStore, setLine, type SetLine } from '../specimen/set-line.ts';
import { LINES } from './words.ts';
import { readLines } from './read-lines.ts';

/** Ten faces of all kinds that English data can read at all. */
export const READ_FACES: readonly string[] = [
  'stardos-stencil-700',
  'saira-stencil-one-400',
  'playfair-display-700',
  'libre-caslon-text-700',
  'cinzel-700',
  'zilla-slab-700',
  'alfa-slab-one-400',
  'bebas-neue-400',
  'oswald-700',
  'berkshire-swash-400',
];

const CAP_MM = 50;

export interface Legibility {
  readonly face: string;
  readonly characters: number;
  /** Characters to change, add or drop to come from what was read to what was written. */
  readonly wrongUnbridged: number;
  readonly wrongBridged: number;
}

/**
 * How often the reader errs with and without bridges: 1.5 mm stainless, hidden manner, capitals of 50 mm.
 * Capitals and small letters count as the same, since several faces have only one of them.
 */
export async function legibility(face: string): Promise<Legibility> {
  const { rules } = stockRules(
    { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
    'auto',
    BUILT_IN,
  );
  const set: SetLine[] = [];
  const store = lineStore();
  for (const line of LINES) set.push(await setLine(face, line, CAP_MM, rules, 'hidden', store));
  const [unbridged, bridged] = await Promise.all([
    readLines(
      set.map((s) => s.drawn),
      CAP_MM,
    ),
    readLines(
      set.map((s) => s.openings),
      CAP_MM,
    ),
  ]);
  const wrong = (read: readonly string[]) =>
    LINES.reduce((sum, line, i) => sum + editDistance(line.toLowerCase(), (read[i] ?? '').toLowerCase()), 0);
  return {
    face,
    characters: LINES.reduce((sum, line) => sum + line.length, 0),
    wrongUnbridged: wrong(unbridged),
    wrongBridged: wrong(bridged),
  };
}

/** Levenshtein's distance (V. I. Levenshtein, 1966), by the usual two rows (Wagner and Fischer, 1974). */
export function editDistance(a: string, b: string): number {
  let before = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = before[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(change, before[j]! + 1, row[j - 1]! + 1));
    }
    before = row;
  }
  return before[b.length]!;
}
