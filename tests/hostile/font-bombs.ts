import { concat } from './bytes.ts';

/**
 * Fonts made by hand of a few hundred bytes that say billions of things (OpenType 1.9: glyf, cmap; Adobe technical notes
 * 5176 and 5177 for outlines in PostScript).
 */

const u8 = (...n: number[]): number[] => n;
const u16 = (...n: number[]): number[] => n.flatMap((v) => [(v >> 8) & 255, v & 255]);
const u32 = (...n: number[]): number[] => n.flatMap((v) => u16(v >>> 16, v & 0xffff));

/** A font file around tables (OpenType 1.9, "Font file"); checksums are not looked at. */
export function fontOf(flavour: string, tables: Readonly<Record<string, readonly number[]>>): Uint8Array {
  const names = Object.keys(tables).sort();
  const text = (s: string): number[] => Array.from(s, (c) => c.charCodeAt(0));
  const head = [...text(flavour), ...u16(names.length, 0, 0, 0)];
  let at = 12 + 16 * names.length;
  const body: number[][] = [];
  for (const name of names) {
    const data = [...tables[name]!];
    head.push(...text(name), ...u32(0, at, data.length));
    while (data.length % 4) data.push(0);
    body.push(data);
    at += data.length;
  }
  return concat([head, ...body]);
}

/** All that is needed besides the outlines, for so many glyphs; A to Z are the last glyph. */
function around(glyphs: number, cmap = letters(glyphs - 1)): Record<string, number[]> {
  return {
    head: [
      ...u32(0x10000, 0, 0, 0x5f0f3cf5),
      ...u16(0, 1000),
      ...u32(0, 0, 0, 0),
      ...u16(0, 0, 500, 500, 0, 8, 2, 0, 0),
    ],
    hhea: [...u32(0x10000), ...u16(800, 0xff38, 0, 500, 0, 0, 500, 1, 0, 0, 0, 0, 0, 0, 0, 1)],
    hmtx: [...u16(500, 0), ...Array.from({ length: glyphs - 1 }, () => u16(0)).flat()],
    maxp: [...u32(0x10000), ...u16(glyphs, 4, 1, 4, 1, 2, 0, 0, 0, 0, 0, 0, 2, 16)],
    cmap,
    name: u16(0, 0, 6),
    post: u32(0x30000, 0, 0, 0, 0, 0, 0, 0),
  };
}

/** cmap format 4: A to Z all of one glyph, by single segments. */
function letters(glyph: number): number[] {
  const codes = [...Array.from({ length: 26 }, (_, i) => 65 + i), 0xffff];
  return segments(codes.map((c) => [c, c, (glyph - c) & 0xffff]));
}

function segments(all: readonly (readonly number[])[]): number[] {
  const [n, size] = [all.length, 16 + 8 * all.length];
  const column = (i: number): number[] => all.flatMap((s) => u16(s[i]!));
  return [
    ...u16(0, 1, 3, 1), ...u32(12), ...u16(4, size & 0xffff, 0, 2 * n, 0, 0, 0),
    ...column(1), ...u16(0), ...column(0), ...column(2), ...all.flatMap(() => u16(0)),
  ]; // prettier-ignore
}

/** A triangle, and glyphs each made of the one before, `each` times. */
export function doublingGlyphs(levels: number, each = 2): Uint8Array {
  const triangle = [
    ...u16(1, 0, 0, 500, 500, 2, 0),
    ...u8(1, 1, 1),
    ...u16(0, 500, 0xff06),
    ...u16(0, 0, 500),
    ...u8(0),
  ];
  const glyphs: number[][] = [[], triangle];
  for (let i = 0; i < levels; i++) {
    const parts = Array.from({ length: each }, (_, k) => u16(k + 1 < each ? 0x23 : 0x3, i + 1, k * 10, 0));
    glyphs.push([...u16(0xffff, 0, 0, 500, 500), ...parts.flat()]);
  }
  const loca = [0];
  for (const g of glyphs) loca.push(loca.at(-1)! + g.length);
  const glyf = glyphs.flat();
  const tables = around(glyphs.length);
  tables['head']!.splice(50, 2, ...u16(1));
  return fontOf('\u0000\u0001\u0000\u0000', { ...tables, glyf, loca: u32(...loca) });
}

/** Segments of characters that all overlap: each is written down again. */
export function overlappingCharacters(count: number): Uint8Array {
  const all = Array.from({ length: count }, () => [0, 0xfffe, 1]);
  const tables = around(2, segments([...all, [0xffff, 0xffff, 1]]));
  return fontOf('\u0000\u0001\u0000\u0000', { ...tables, glyf: u16(0, 0, 0, 0, 0, 0), loca: u16(0, 0, 6) });
}

/** An INDEX of Adobe note 5176, section 5. */
function index(items: readonly (readonly number[])[]): number[] {
  if (items.length === 0) return u16(0);
  const offsets = [1];
  for (const item of items) offsets.push(offsets.at(-1)! + item.length);
  return [...u16(items.length), 4, ...offsets.flatMap((o) => u32(o)), ...items.flat()];
}

const whole = (n: number): number[] => [29, ...u32(n)];

/** Subroutines that each call the next twice (or as often as said); the last draws a line. */
export function doublingSubroutines(levels: number, each = 2): Uint8Array {
  const call = (n: number): number[] => [n - 107 + 139, 10];
  const subrs = Array.from({ length: levels }, (_, i) =>
    i + 1 < levels ? [...Array.from({ length: each }, () => call(i + 1)).flat(), 11] : [149, 149, 5, 11],
  );
  const char = [139, 139, 21, ...call(0), 14];
  return postScript([[14], char], index(subrs));
}

/** An INDEX whose every second entry is all of the table over again. */
export function overlappingIndex(count: number): Uint8Array {
  const size = 200_000;
  const offsets = Array.from({ length: count + 1 }, (_, i) => (i % 2 ? size : 1));
  const subrs = [...u16(count), 4, ...offsets.flatMap((o) => u32(o)), ...Array.from({ length: size }, () => 11)];
  return postScript([[14], [139, 139, 21, 149, 149, 5, 14]], subrs);
}

function postScript(chars: readonly (readonly number[])[], subrs: readonly number[]): Uint8Array {
  const header = [1, 0, 4, 4];
  const names = index([[65]]);
  const [strings, global, glyphs] = [index([]), index([]), index(chars)];
  const local = [...whole(6), 19];
  const topOf = (charStrings: number, at: number): number[] => [
    ...whole(charStrings), 17, ...whole(local.length), ...whole(at), 18,
  ]; // prettier-ignore
  const before = header.length + names.length + index([topOf(0, 0)]).length + strings.length + global.length;
  const top = index([topOf(before, before + glyphs.length)]);
  const cff = [...header, ...names, ...top, ...strings, ...global, ...glyphs, ...local, ...subrs];
  return fontOf('OTTO', { ...around(2), 'CFF ': cff });
}
