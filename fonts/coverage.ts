import type { Face } from '../geometry/adapters/face.ts';

/** Which of the printable characters of Basic Latin and Latin-1 (Unicode blocks 0000 and 0080) a face has. */
export interface Coverage {
  readonly has: string;
  readonly lacks: string;
}

/** Measured on the loaded face: a character counts when it is there and, blanks apart, draws something. */
export function coverageOf(face: Face): Coverage {
  const has: string[] = [];
  const lacks: string[] = [];
  for (const char of printableLatin1()) {
    const glyph = face.glyph(char);
    const there = glyph !== undefined && (BLANKS.has(char) || glyph.outline.length > 0);
    (there ? has : lacks).push(char);
  }
  return { has: has.join(''), lacks: lacks.join('') };
}

/** The 95 printable characters of Basic Latin and the 96 of Latin-1, less the soft hyphen, which prints nothing. */
export function printableLatin1(): string[] {
  const out: string[] = [];
  for (let code = 0x20; code <= 0xff; code++) {
    if ((code >= 0x7f && code < 0xa0) || code === 0xad) continue;
    out.push(String.fromCharCode(code));
  }
  return out;
}

const BLANKS = new Set([' ', '\u00a0']);
