import opentype from 'opentype.js';
import type { Font, Glyph, PathCommand as FontCommand } from 'opentype.js';
import type { Outline, PathCommand } from '../shapes.ts';
import type { Face, FaceGlyph, KerningTable } from './face.ts';
import { fontFileProblem, hasSaneCharacterMap } from './font-file.ts';
import { unpackWoff } from './woff.ts';

/**
 * The only importer of opentype.js: font files in, faces of plain outlines out.
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
): { face: Face } | { problem: string } {
  const view = bytes instanceof Uint8Array ? bytes : new Uint8Array(bytes);
  const problem = fontFileProblem(view);
  if (problem !== undefined) return { problem };
  try {
    const plain = isWoff(view) ? unpackWoff(view) : view;
    if (!plain || !hasSaneCharacterMap(plain)) return { problem: DAMAGED };
    // A copy: the reader wants a buffer of its own, and a view may lie inside a larger one.
    const font = opentype.parse(plain.slice().buffer);
    return faceOf(id, font, kerning, joins);
  } catch {
    return { problem: DAMAGED };
  }
}

const DAMAGED = 'The font file is damaged. Get a fresh copy of it, or choose another face.';

function isWoff(bytes: Uint8Array): boolean {
  return bytes[0] === 0x77 && bytes[1] === 0x4f && bytes[2] === 0x46 && bytes[3] === 0x46;
}

/** Capitals with flat tops; the median of their heights is safe from one swashed letter. */
const FLAT_CAPITALS = 'HIEFTLNZDB';

function faceOf(
  id: string,
  font: Font,
  kerning: KerningTable | undefined,
  joins: boolean,
): { face: Face } | { problem: string } {
  const em = font.unitsPerEm;
  if (!(em > 0)) return { problem: 'The font file does not say how large its letters are. Choose another face.' };

  const glyphs = new Map<string, FaceGlyph | undefined>();
  const glyph = (char: string): FaceGlyph | undefined => {
    if (!glyphs.has(char)) glyphs.set(char, readGlyph(font, char));
    return glyphs.get(char);
  };
  const usable = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789').some(
    (char) => (glyph(char)?.outline.length ?? 0) > 0,
  );
  if (!usable) return { problem: 'The font has no Latin letters or figures that can be cut. Choose another face.' };

  const kern = kerning ? tableKern(kerning) : fontKern(font);
  const face: Face = {
    id,
    name: nameOf(font) ?? id,
    capHeight: capHeightOf(font, glyph),
    ascent: positive(font.ascender / em) ?? 0.8,
    descent: -(positive(-font.descender / em) ?? 0.2),
    joins,
    glyph,
    kern,
  };
  return { face };
}

function readGlyph(font: Font, char: string): FaceGlyph | undefined {
  try {
    // Index 0 is the box that stands for a missing character.
    if (font.charToGlyphIndex(char) <= 0) return undefined;
    const glyph: Glyph = font.charToGlyph(char);
    const advance = (glyph.advanceWidth ?? 0) / font.unitsPerEm;
    if (!Number.isFinite(advance) || advance < 0) return undefined;
    const outline = outlineOf(glyph.path.commands, font.unitsPerEm);
    return outline && { char, advance, outline };
  } catch {
    return undefined;
  }
}

/** In shares of the em, every subpath closed; undefined when a number in it is none. */
function outlineOf(commands: readonly FontCommand[], em: number): Outline | undefined {
  const out: PathCommand[] = [];
  let open = false;
  const close = () => {
    if (open) out.push({ type: 'Z' });
    open = false;
  };
  for (const c of commands) {
    switch (c.type) {
      case 'M':
        close();
        out.push({ type: 'M', x: c.x / em, y: c.y / em });
        open = true;
        break;
      case 'L':
        out.push({ type: 'L', x: c.x / em, y: c.y / em });
        break;
      case 'Q':
        out.push({ type: 'Q', x1: c.x1 / em, y1: c.y1 / em, x: c.x / em, y: c.y / em });
        break;
      case 'C':
        out.push({ type: 'C', x1: c.x1 / em, y1: c.y1 / em, x2: c.x2 / em, y2: c.y2 / em, x: c.x / em, y: c.y / em });
        break;
      case 'Z':
        close();
        break;
    }
  }
  close();
  const sound = out.every((c) => Object.values(c).every((v) => typeof v === 'string' || Number.isFinite(v)));
  return sound ? out : undefined;
}

function capHeightOf(font: Font, glyph: (char: string) => FaceGlyph | undefined): number {
  const tops = Array.from(FLAT_CAPITALS, (char) => topOf(glyph(char))).filter((top) => top > 0);
  tops.sort((a, b) => a - b);
  const measured = tops[Math.floor(tops.length / 2)];
  if (measured !== undefined) return measured;
  const table: unknown = (font.tables['os2'] as { sCapHeight?: unknown } | undefined)?.sCapHeight;
  return (typeof table === 'number' ? positive(table / font.unitsPerEm) : undefined) ?? 0.7;
}

function topOf(glyph: FaceGlyph | undefined): number {
  return (glyph?.outline ?? []).reduce((top, c) => (c.type === 'Z' ? top : Math.max(top, c.y)), 0);
}

function nameOf(font: Font): string | undefined {
  const names = font.names as unknown as Record<string, Record<string, string> | undefined>;
  const family = names['fontFamily']?.['en'] ?? Object.values(names['fontFamily'] ?? {})[0];
  const style = names['fontSubfamily']?.['en'];
  if (!family) return undefined;
  return style && style !== 'Regular' ? `${family} ${style}` : family;
}

function tableKern(table: KerningTable): (left: string, right: string) => number {
  const pairs = new Map<string, number>();
  for (const [left, lines] of Object.entries(table.pairs)) {
    for (const line of lines.split('\n')) {
      const space = line.indexOf(' ');
      for (const right of line.slice(space + 1)) {
        pairs.set(left + right, Number(line.slice(0, space)) / table.unitsPerEm);
      }
    }
  }
  return (left, right) => pairs.get(left + right) ?? 0;
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

function positive(value: number): number | undefined {
  return Number.isFinite(value) && value > 0 ? value : undefined;
}
