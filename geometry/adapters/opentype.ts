import opentype from 'opentype.js';
import type { Font, Glyph } from 'opentype.js';
import { doWithin } from '../measure/counted-work.ts';
import { refused } from '../sentences/say.ts';
import type { Refused } from '../sentences/wording.ts';
import { countOpentype, countSubroutines } from './count-opentype.ts';
import { faceOf, type FontParts, tableKern } from './face-of.ts';
import type { Face, KerningTable } from './face.ts';
import { fontFileProblem, hasSaneCharacterMap } from './font-file.ts';
import { unpackWoff } from './unpack-woff.ts';
import { isWoff } from './woff.ts';

countOpentype();

/** Steps of counted work to read a font with: the largest that is taken needs fewer than its bytes three times over. */
const MOST_READ_STEPS = 16_000_000;
/** And for one glyph: a point or a byte each. */
const MOST_GLYPH_STEPS = 50_000;
/** Glyphs beyond that: after so many the file is no font but a trap, and no other glyph is tried. */
const MOST_ENDLESS = 3;

/**
 * Reads font files, as does only count-opentype.ts beside it with opentype.js: font files in, faces of plain outlines out.
 *
 * Takes from the library only single glyphs (their path commands, in font units, y up) and its kerning value of
 * a pair. Whole strings are never given to it: its ligatures and contextual forms are not wanted on an arc, and
 * it loses pair kerning that a font wraps in extension lookups; hence the kerning table. Its path text is never
 * used: that is rounded and turned upside down.
 */
export function readFace(
  id: string,
  bytes: ArrayBuffer | Uint8Array,
  kerning?: KerningTable,
  joins = false,
): { face: Face } | Refused {
  const view = bytes instanceof Uint8Array ? bytes : new Uint8Array(bytes);
  const problem = fontFileProblem(view);
  if (problem !== undefined) return problem;
  try {
    const plain = isWoff(view) ? unpackWoff(view) : view;
    if (!plain || !hasSaneCharacterMap(plain)) return refused('reading.fontDamaged');
    // A copy: the reader wants a buffer of its own, and a view may lie inside a larger one.
    const font = doWithin(MOST_READ_STEPS, () => opentype.parse(plain.slice().buffer));
    if (!font) return refused('reading.fontDamaged');
    countSubroutines(font);
    return faceOf({
      id,
      name: nameOf(font) ?? id,
      joins,
      unitsPerEm: font.unitsPerEm,
      ascender: font.ascender,
      descender: font.descender,
      statedCapHeight: capHeightIn(font),
      glyph: glyphsIn(font),
      kern: kerning ? tableKern(kerning) : fontKern(font),
    });
  } catch {
    return refused('reading.fontDamaged');
  }
}

function glyphsIn(font: Font): FontParts['glyph'] {
  let endless = 0;
  return (char: string) => {
    // Index 0 is the box that stands for a missing character.
    if (endless >= MOST_ENDLESS || font.charToGlyphIndex(char) <= 0) return undefined;
    const glyph: Glyph = font.charToGlyph(char);
    const path = doWithin(MOST_GLYPH_STEPS, () => glyph.path);
    if (!path) endless++;
    return path && { advance: glyph.advanceWidth ?? 0, commands: path.commands };
  };
}

function capHeightIn(font: Font): number | undefined {
  const stated: unknown = (font.tables['os2'] as { sCapHeight?: unknown } | undefined)?.sCapHeight;
  return typeof stated === 'number' ? stated : undefined;
}

function nameOf(font: Font): string | undefined {
  const names = font.names as unknown as Record<string, Record<string, string> | undefined>;
  const family = names['fontFamily']?.['en'] ?? Object.values(names['fontFamily'] ?? {})[0];
  const style = names['fontSubfamily']?.['en'];
  if (!family) return undefined;
  return style && style !== 'Regular' ? `${family} ${style}` : family;
}

function fontKern(font: Font): (left: string, right: string) => number {
  return (left, right) => {
    try {
      const units = font.getKerningValue(font.charToGlyph(left), font.charToGlyph(right));
      return Number.isFinite(units) ? units / font.unitsPerEm : 0;
    } catch {
      return 0;
    }
  };
}
