import type { PathCommand } from '../shapes.ts';
import type { Refused } from '../sentences/wording.ts';
import { faceOf, tableKern } from './face-of.ts';
import type { Face, KerningTable } from './face.ts';
import { glyfReader, type GlyfPoint } from './glyf.ts';

/**
 * A face of the catalogue out of its TrueType file: a small reader of just the tables that a plate needs, so
 * that the page does not load the large one (opentype.ts) before somebody brings a font of their own. Takes files that
 * are known to be whole; restOf: the face that the file holds further letters of. undefined for a kind that it does not know. Table layouts: OpenType 1.9, chapters cmap, head,
 * hhea, hmtx, loca, maxp and glyf. Tests hold every glyph against opentype.js.
 */
export function readTrueType(
  id: string,
  name: string,
  bytes: Uint8Array,
  kerning: KerningTable,
  joins: boolean,
  restOf?: Face,
): { face: Face } | Refused | undefined {
  const file = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const table = tablesOf(file);
  const [head, hhea, hmtx, cmap, maxp] = ['head', 'hhea', 'hmtx', 'cmap', 'maxp'].map((tag) => table.get(tag));
  const [loca, glyf] = [table.get('loca'), table.get('glyf')];
  if (!head || !hhea || !hmtx || !cmap || !maxp || !loca || !glyf) return undefined;
  const indexOf = characterMap(cmap);
  if (!indexOf) return undefined;
  const points = glyfReader(glyf, loca, head.getInt16(50) === 1, maxp.getUint16(4));
  const advances = hhea.getUint16(34);
  return faceOf({
    id,
    name,
    joins,
    unitsPerEm: head.getUint16(18),
    ascender: hhea.getInt16(4),
    descender: hhea.getInt16(6),
    statedCapHeight: undefined,
    restOf,
    glyph(char) {
      const index = indexOf(char.codePointAt(0) ?? 0);
      // Index 0 is the box that stands for a missing character.
      if (index === 0) return undefined;
      const advance = hmtx.getUint16(4 * Math.min(index, advances - 1));
      return { advance, commands: points(index).flatMap(contourCommands) };
    },
    kern: tableKern(kerning),
  });
}

function tablesOf(file: DataView): ReadonlyMap<string, DataView> {
  const tables = new Map<string, DataView>();
  for (let i = 0; i < file.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((n) => file.getUint8(at + n)));
    tables.set(tag, new DataView(file.buffer, file.byteOffset + file.getUint32(at + 8), file.getUint32(at + 12)));
  }
  return tables;
}

/** The last map of Unicode, as the large reader takes it; 0 for a character that is not in it. */
function characterMap(cmap: DataView): ((code: number) => number) | undefined {
  for (let i = cmap.getUint16(2) - 1; i >= 0; i--) {
    const [platform, encoding] = [cmap.getUint16(4 + 8 * i), cmap.getUint16(6 + 8 * i)];
    const unicode = platform === 3 ? [0, 1, 10].includes(encoding) : platform === 0 && encoding <= 4;
    if (!unicode) continue;
    const at = cmap.getUint32(8 + 8 * i);
    const format = cmap.getUint16(at);
    if (format === 4) return (code) => segmentIndex(cmap, at, code);
    return format === 12 ? (code) => groupIndex(cmap, at, code) : undefined;
  }
  return undefined;
}

/** cmap format 4: segments of 16-bit codes; the last one only ends the list. */
function segmentIndex(cmap: DataView, at: number, code: number): number {
  const bytes = cmap.getUint16(at + 6);
  for (let s = 0; s < bytes - 2; s += 2) {
    if (code > cmap.getUint16(at + 14 + s)) continue;
    const start = cmap.getUint16(at + 16 + bytes + s);
    if (code < start) return 0;
    const delta = cmap.getInt16(at + 16 + 2 * bytes + s);
    const place = at + 16 + 3 * bytes + s;
    const offset = cmap.getUint16(place);
    const index = offset === 0 ? code : cmap.getUint16(place + offset + 2 * (code - start));
    return offset !== 0 && index === 0 ? 0 : (index + delta) & 0xffff;
  }
  return 0;
}

/** cmap format 12: groups of 32-bit codes that follow each other. */
function groupIndex(cmap: DataView, at: number, code: number): number {
  for (let g = 0; g < cmap.getUint32(at + 12); g++) {
    const group = at + 16 + 12 * g;
    if (code > cmap.getUint32(group + 4)) continue;
    const start = cmap.getUint32(group);
    return code < start ? 0 : cmap.getUint32(group + 8) + code - start;
  }
  return 0;
}

/** Quadratic curves as TrueType has them: between two points off the curve lies one on it, in the middle. */
function contourCommands(contour: readonly GlyfPoint[]): PathCommand[] {
  const first = contour[0];
  const last = contour.at(-1);
  if (!first || !last) return [];
  const from = last.on ? last : first.on ? first : middle(last, first);
  const out: PathCommand[] = [{ type: 'M', x: from.x, y: from.y }];
  contour.forEach((point, i) => {
    const next = contour[(i + 1) % contour.length] ?? first;
    if (point.on) out.push({ type: 'L', x: point.x, y: point.y });
    else {
      const to = next.on ? next : middle(point, next);
      out.push({ type: 'Q', x1: point.x, y1: point.y, x: to.x, y: to.y });
    }
  });
  out.push({ type: 'Z' });
  return out;
}

function middle(a: GlyfPoint, b: GlyfPoint): { readonly x: number; readonly y: number } {
  return { x: (a.x + b.x) * 0.5, y: (a.y + b.y) * 0.5 };
}
