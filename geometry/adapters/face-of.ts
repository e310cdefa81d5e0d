import type { Outline, PathCommand } from '../shapes.ts';
import type { Face, FaceGlyph, KerningTable } from './face.ts';

/** One command of a glyph as font readers give it, in font units, y up. */
export type UnitCommand =
  | { readonly type: 'M' | 'L'; readonly x: number; readonly y: number }
  | { readonly type: 'Q'; readonly x1: number; readonly y1: number; readonly x: number; readonly y: number }
  | {
      readonly type: 'C';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly type: 'Z' };

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
  /** undefined for a character that the font does not have. May throw on a damaged glyph. */
  glyph(char: string): { readonly advance: number; readonly commands: readonly UnitCommand[] } | undefined;
  kern(left: string, right: string): number;
}

/** Capitals with flat tops; the median of their heights is safe from one swashed letter. */
const FLAT_CAPITALS = 'HIEFTLNZDB';
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';

/** The face of plain outlines, in shares of the em, whichever reader took the file apart. */
export function faceOf(font: FontParts): { face: Face } | { problem: string } {
  const em = font.unitsPerEm;
  if (!(em > 0)) return { problem: 'The font file does not say how large its letters are. Choose another face.' };
  const glyphs = new Map<string, FaceGlyph | undefined>();
  const glyph = (char: string): FaceGlyph | undefined => {
    if (!glyphs.has(char)) glyphs.set(char, readGlyph(font, char));
    return glyphs.get(char);
  };
  const usable = Array.from(LETTERS).some((char) => (glyph(char)?.outline.length ?? 0) > 0);
  if (!usable) return { problem: 'The font has no Latin letters or figures that can be cut. Choose another face.' };
  const stated = font.statedCapHeight === undefined ? undefined : positive(font.statedCapHeight / em);
  return {
    face: {
      id: font.id,
      name: font.name,
      capHeight: flatTop(glyph) ?? stated ?? 0.7,
      ascent: positive(font.ascender / em) ?? 0.8,
      descent: -(positive(-font.descender / em) ?? 0.2),
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
function outlineOf(commands: readonly UnitCommand[], em: number): Outline | undefined {
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
