/** Letters written from right to left, and signs that turn the reading direction (Unicode Standard Annex 9, 2). */
const TURNS =
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
const [FIRST_STRONG, END] = ['\u2068', '\u2069'];

/**
 * A text of somebody else's, fit to stand in a sentence of ours: it keeps its own reading direction and cannot turn what
 * stands around it. Isolated as Unicode Standard Annex 9, 3.1 has it; signs that would reach out of it are dropped. Text
 * that turns nothing stays as it is.
 */
export function isolate(text: string): string {
  if (!TURNS.test(text)) return text;
  let [inside, depth] = ['', 0];
  for (const sign of text) {
    if (sign >= '\u202a' && sign <= '\u202e') continue;
    if (sign === END) {
      if (depth === 0) continue;
      depth--;
    } else if (sign >= '\u2066' && sign <= FIRST_STRONG) depth++;
    inside += sign;
  }
  return `${FIRST_STRONG}${inside}${END.repeat(depth + 1)}`;
}

/** For paper, where letters are set one after the other and such signs would print as boxes. */
export function withoutIsolates(text: string): string {
  return text.replace(/[\u2066-\u2069]/g, '');
}
