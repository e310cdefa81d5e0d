import { amount, refused } from '../sentences/say.ts';
import type { Amount, Refused } from '../sentences/wording.ts';

/**
 * Looks at the first bytes and the table directory of a font file before the font reader sees it, so that a
 * broken file gets a sentence instead of an exception from deep inside. Layouts: OpenType 1.9 "Font file" chapter
 * (sfnt) and W3C WOFF 1.0 section 3-5.
 */

/** The design keeps a font as base64 of at most 8 million characters. */
const GREATEST_FONT_BYTES = 6_000_000;
/** Unpacked size above which a packed font is refused: ten times what is allowed packed. */
const GREATEST_UNPACKED_BYTES = 60_000_000;
const GREATEST_TABLE_COUNT = 200;

/** undefined when the file looks like a whole TTF, OTF or WOFF; otherwise why not. */
export function fontFileProblem(bytes: Uint8Array): Refused | undefined {
  if (bytes.length === 0) return refused('reading.fontEmpty');
  if (bytes.length > GREATEST_FONT_BYTES) {
    return refused('reading.fontLarge', { size: mega(bytes.length), most: mega(GREATEST_FONT_BYTES) });
  }
  const strange = strangeKind(bytes);
  if (strange !== undefined) return strange;
  if (bytes.length < 12) return CUT_SHORT;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return tag(bytes, 0) === 'wOFF' ? woffProblem(view) : sfntProblem(view);
}

const CUT_SHORT = refused('reading.fontCutShort');
const DAMAGED = refused('reading.fontDamaged');

function strangeKind(bytes: Uint8Array): Refused | undefined {
  const start = tag(bytes, 0);
  if (start === 'wOFF' || start === 'OTTO' || start === 'true' || start === '\u0000\u0001\u0000\u0000')
    return undefined;
  if (start === 'wOF2') return refused('reading.woff2');
  if (start === 'ttcf') return refused('reading.faces');
  if (start.startsWith('PK') || start.startsWith('\u001f\u008b')) return refused('reading.archive');
  const text = Array.from(bytes.subarray(0, 200), (b) => String.fromCharCode(b)).join('');
  if (/^[\s\u00ef\u00bb\u00bf]*<(!doctype|html|head|\?xml)/i.test(text)) return refused('reading.webPage');
  return refused('reading.notFont');
}

function sfntProblem(view: DataView): Refused | undefined {
  const count = view.getUint16(4);
  if (count === 0 || count > GREATEST_TABLE_COUNT) return DAMAGED;
  if (view.byteLength < 12 + 16 * count) return CUT_SHORT;
  for (let i = 0; i < count; i++) {
    const at = 12 + 16 * i;
    if (view.getUint32(at + 8) + view.getUint32(at + 12) > view.byteLength) return CUT_SHORT;
  }
  return undefined;
}

/**
 * Character maps of kinds 4 and 12 may claim billions of characters, and the font reader would write each down.
 * Takes an unpacked font whose table directory was judged; true when the map is one it can read to the end.
 */
export function hasSaneCharacterMap(bytes: Uint8Array): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    if (tag(bytes, at) === 'cmap') return saneMaps(new DataView(view.buffer, view.byteOffset + view.getUint32(at + 8)));
  }
  return false;
}

function saneMaps(map: DataView): boolean {
  for (let i = 0; i < map.getUint16(2); i++) {
    const at = map.getUint32(4 + 8 * i + 4);
    const kind = map.getUint16(at);
    if (kind === 4 && !saneSegments(map, at)) return false;
    if (kind !== 12) continue;
    const groups = map.getUint32(at + 12);
    let characters = 0;
    for (let g = 0; g < groups; g++) {
      const group = at + 16 + 12 * g;
      characters += Math.max(0, map.getUint32(group + 4) - map.getUint32(group) + 1);
      if (characters > MOST_CHARACTERS) return false;
    }
  }
  return true;
}

/** Segments of 16-bit characters (cmap format 4): overlapping ones may add up to billions. */
function saneSegments(map: DataView, at: number): boolean {
  const count = map.getUint16(at + 6) >> 1;
  let characters = 0;
  for (let s = 0; s < count; s++) {
    const [last, first] = [map.getUint16(at + 14 + 2 * s), map.getUint16(at + 16 + 2 * count + 2 * s)];
    characters += Math.max(0, last - first + 1);
  }
  return characters <= MOST_CHARACTERS;
}

/** Unicode has 1,114,112 code points; a font holds at most 65,535 glyphs (OpenType 1.9, maxp). */
const MOST_CHARACTERS = 1_114_112;

function woffProblem(view: DataView): Refused | undefined {
  if (view.byteLength < 44) return CUT_SHORT;
  const count = view.getUint16(12);
  if (count === 0 || count > GREATEST_TABLE_COUNT) return DAMAGED;
  if (view.getUint32(8) > view.byteLength || view.byteLength < 44 + 20 * count) return CUT_SHORT;
  let unpacked = 0;
  for (let i = 0; i < count; i++) {
    const at = 44 + 20 * i;
    if (view.getUint32(at + 4) + view.getUint32(at + 8) > view.byteLength) return CUT_SHORT;
    unpacked += view.getUint32(at + 12);
  }
  return unpacked > GREATEST_UNPACKED_BYTES ? DAMAGED : undefined;
}

function tag(bytes: Uint8Array, at: number): string {
  return Array.from(bytes.subarray(at, at + 4), (b) => String.fromCharCode(b)).join('');
}

function mega(bytes: number): Amount {
  return amount(bytes / 1e6, 1);
}
