import * as fontkit from 'fontkit';
import type { Font } from 'fontkit';
import type { KerningTable } from '../geometry/adapters/face.ts';
import { printableLatin1 } from './coverage.ts';

/** Development only: pair kerning as a second font library, fontkit, works it out from GPOS or the old kern table. */

/** Everything that may swap or join glyphs is off: only the space between two plain glyphs is wanted. */
const FEATURES = {
  liga: false,
  rlig: false,
  clig: false,
  calt: false,
  rclt: false,
  ccmp: false,
  locl: false,
  dlig: false,
  hlig: false,
  frac: false,
  numr: false,
  dnom: false,
  mark: false,
  mkmk: false,
  kern: true,
};

export function openFont(bytes: Uint8Array): Font {
  const font = fontkit.create(Buffer.from(bytes));
  if (!('layout' in font)) throw new Error('a collection, not a single font');
  return font;
}

/** In font units; 0 when either character is missing or the pair does not stay two plain glyphs. */
export function pairKerning(font: Font, left: string, right: string): number {
  if (!hasChar(font, left) || !hasChar(font, right)) return 0;
  const plain = font.glyphForCodePoint(left.codePointAt(0) ?? 0);
  const run = font.layout(left + right, FEATURES);
  const first = run.positions[0];
  if (run.glyphs.length !== 2 || !first || run.glyphs[0]?.id !== plain.id) return 0;
  return Math.round(first.xAdvance - plain.advanceWidth);
}

/**
 * Every pair of printable Latin-1 characters that is not 0, in thousandths of the em: finer than that no cut shows,
 * and some faces would fill a large file with differences of one unit.
 */
export function kerningTable(font: Font): KerningTable {
  const chars = printableLatin1().filter((char) => char !== '\u00a0' && hasChar(font, char));
  const pairs: Record<string, string> = {};
  for (const left of chars) {
    const byAmount = new Map<number, string>();
    for (const right of chars) {
      const units = Math.round((pairKerning(font, left, right) * 1000) / font.unitsPerEm);
      if (units !== 0) byAmount.set(units, (byAmount.get(units) ?? '') + right);
    }
    if (byAmount.size > 0) pairs[left] = [...byAmount].map(([units, rights]) => `${units} ${rights}`).join('\n');
  }
  return { unitsPerEm: 1000, pairs };
}

function hasChar(font: Font, char: string): boolean {
  return font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0);
}
