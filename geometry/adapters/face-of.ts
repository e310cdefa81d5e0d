import { mapOutline } from '../measure/map-outline.ts';
import type { Outline, PathCommand } from '../shapes.ts';
import { refused } from '../sentences/say.ts';
import type { Refused } from '../sentences/wording.ts';
import type { Face, FaceGlyph, KerningTable } from './face.ts';

/** What a reader of font files knows of one font; lengths in font units. */
export interface FontParts {
  readonly id: string;
  readonly name: string;
  readonly joins: boolean;
  readonly unitsPerEm: number;
  readonly ascender: number;
  readonly descender: number;
  /** Height of the capitals as the font itself says it; only for fonts without flat-topped ones. */
  readonly statedCapHeight: number | undefined;
  /** In font units, y up; undefined for a character that the font does not have. May throw on a damaged glyph. */
  glyph(char: string): { readonly advance: number; readonly commands: Outline } | undefined;
  kern(left: string, right: string): number;
  /** The rest of a face whose letters are in another file: it may hold none of A to Z and stands on the measures of this. */
  readonly restOf?: Face | undefined;
}

/** Capitals with flat tops; the median of their heights is safe from one swashed letter. */
const FLAT_CAPITALS = 'HIEFTLNZDB';
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';

/** For a font that says nothing sensible, in shares of the em: common practice, no source. */
const USUAL = { capHeight: 0.7, ascent: 0.8, descent: 0.2 } as const;

/** The face of plain outlines, in shares of the em, whichever reader took the file apart. */
export function faceOf(font: FontParts): { face: Face } | Refused {
  const em = font.unitsPerEm;
  if (!(em > 0)) return refused('reading.fontNoSize');
  const glyphs = new Map<string, FaceGlyph | undefined>();
  const glyph = (char: string): FaceGlyph | undefined => {
    if (!glyphs.has(char)) glyphs.set(char, readGlyph(font, char));
    return glyphs.get(char);
  };
  const usable =
    font.restOf !== undefined || Array.from(LETTERS).some((char) => (glyph(char)?.outline.length ?? 0) > 0);
  if (!usable) return refused('reading.fontNoLetters');
  const stated = font.statedCapHeight === undefined ? undefined : positive(font.statedCapHeight / em);
  return {
    face: {
      id: font.id,
      name: font.name,
      capHeight: font.restOf?.capHeight ?? flatTop(glyph) ?? stated ?? USUAL.capHeight,
      ascent: positive(font.ascender / em) ?? USUAL.ascent,
      descent: -(positive(-font.descender / em) ?? USUAL.descent),
      joins: font.joins,
      glyph,
      kern: (left, right) => font.kern(left, right),
    },
  };
}

/** Kerning out of one of our tables. */
export function tableKern(table: KerningTable): (left: string, right: string) => number {
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

function readGlyph(font: FontParts, char: string): FaceGlyph | undefined {
  try {
    const read = font.glyph(char);
    if (!read) return undefined;
    const advance = read.advance / font.unitsPerEm;
    if (!Number.isFinite(advance) || advance < 0) return undefined;
    const outline = outlineOf(read.commands, font.unitsPerEm);
    return outline && { char, advance, outline };
  } catch {
    return undefined;
  }
}

/** In shares of the em, every subpath closed; undefined when a number in it is none. */
function outlineOf(commands: Outline, em: number): Outline | undefined {
  const out: PathCommand[] = [];
  let open = false;
  const close = () => {
    if (open) out.push({ type: 'Z' });
    open = false;
  };
  for (const c of mapOutline(commands, (x, y) => ({ x: x / em, y: y / em }))) {
    if (c.type === 'M' || c.type === 'Z') close();
    if (c.type === 'M') open = true;
    if (c.type !== 'Z') out.push(c);
  }
  close();
  const sound = out.every((c) => Object.values(c).every((v) => typeof v === 'string' || Number.isFinite(v)));
  return sound ? out : undefined;
}

function flatTop(glyph: (char: string) => FaceGlyph | undefined): number | undefined {
  const tops = Array.from(FLAT_CAPITALS, (char) => topOf(glyph(char))).filter((top) => top > 0);
  tops.sort((a, b) => a - b);
  return tops[Math.floor(tops.length / 2)];
}

function topOf(glyph: FaceGlyph | undefined): number {
  return (glyph?.outline ?? []).reduce((top, c) => (c.type === 'Z' ? top : Math.max(top, c.y)), 0);
}

function positive(value: number): number | undefined {
  return Number.isFinite(value) && value > 0 ? value : undefined;
}
