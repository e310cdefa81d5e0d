import { withoutIsolates } from '../../sentences/isolate.ts';
import { oneLine } from '../plain-text.ts';

/** Widths of texts in one style; what is laid out by it knows nothing of any page. */
export interface Measure {
  (text: string): number;
}

/** The text, or its beginning and an ellipsis, no wider than the room. */
export function fitText(text: string, room: number, width: Measure): string {
  if (width(text) <= room) return text;
  const letters = [...text];
  const shortened = (keep: number) => `${letters.slice(0, keep).join('').trimEnd()}…`;
  const keep = most(letters.length - 1, (n) => width(shortened(n)) <= room);
  return keep === 0 ? '' : shortened(keep);
}

/** Lines no wider than the room; a word wider than that is broken where the room ends. */
export function wrapText(text: string, room: number, width: Measure): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (width(longer) <= room) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (width(line) > room && line.length > 1) {
      const letters = [...line];
      const keep = Math.max(
        1,
        most(letters.length - 1, (n) => width(letters.slice(0, n).join('')) <= room),
      );
      lines.push(letters.slice(0, keep).join(''));
      line = letters.slice(keep).join('');
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}

/**
 * Letters that a face lacks: their base letter where it has that, otherwise a question mark rather than a blank box.
 * has: whether the face draws a letter.
 */
export function replaceMissingLetters(text: string, has: (letter: string) => boolean): string {
  return [...oneLine(withoutIsolates(text), 4000)]
    .map((letter) => {
      if (has(letter)) return letter;
      const base = [...letter.normalize('NFKD')].filter(has).join('');
      return base === '' ? '?' : base;
    })
    .join('');
}

/** Largest number up to limit that fits, 0 for none; what fits must fit for all smaller numbers too. */
function most(limit: number, fits: (n: number) => boolean): number {
  let [low, high] = [0, limit];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
