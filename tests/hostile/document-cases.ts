import { readFileSync } from 'node:fs';
import { deflateSync, strToU8, zlibSync } from 'fflate';
import { packageFile } from '../../fonts/node-faces.ts';
import { ownFaceFrom } from '../../fonts/own-face.ts';
import { emptyDesign, newLineText } from '../../geometry/design/defaults.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { toBase64Url } from '../../web/handover/link/base64url.ts';
import { crc32 } from '../../geometry/adapters/crc32.ts';
import { DICTIONARY_1 } from '../../web/handover/link/dictionary-1.ts';
import { packDesign } from '../../web/handover/link/pack-design.ts';
import { readLink } from '../../web/handover/link/read-link.ts';

/** A design file, a link or a font that somebody made to do harm, or that was harmed on its way. */
export interface DocumentCase {
  readonly name: string;
  /** Where such a thing is written of. */
  readonly source: string;
  /** Reads it as the page does: a sentence when it is refused, undefined when it is taken. */
  readonly read: () => string | undefined;
  /** What the sentence says; undefined when it is to be taken, harmless as it is. */
  readonly says: RegExp | undefined;
}

const JSON_RFC = 'RFC 8259 (JSON)';
const DEEP = 'CWE-674, uncontrolled recursion';
const PROTO = 'CWE-1321, prototype pollution; OWASP Prototype Pollution Prevention Cheat Sheet';
const SIZE = 'CWE-400, uncontrolled resource consumption';
const BOMB = 'CWE-409, improper handling of highly compressed data';
const TYPES = 'CWE-20, improper input validation; OWASP Input Validation Cheat Sheet';
const BIDI = 'CVE-2021-42574 (Trojan Source); Unicode Technical Report 36';
const FONT = 'OpenType 1.9, font file and table directory; CWE-125, out-of-bounds read';
const WOFF = 'W3C WOFF File Format 1.0, sections 3 to 5';

function file(text: string): string | undefined {
  const read = readDesign(text);
  return 'problem' in read ? read.problem : undefined;
}

/** A design with some of its parts written by hand. */
function withParts(parts: Record<string, string>): string {
  const marks = Object.keys(parts).map((key, i) => [key, `@${i}@`] as const);
  let text = JSON.stringify({ ...emptyDesign(), ...Object.fromEntries(marks) });
  for (const [key, mark] of marks) text = text.replace(`"${mark}"`, () => parts[key] ?? '');
  return text;
}

const LINE = newLineText('line-1', 'stardos-stencil-400');

export const FILE_CASES: readonly DocumentCase[] = [
  ...(
    [
      ['a million brackets', DEEP, '['.repeat(1_000_000), /nested more deeply/],
      ['200,000 closed brackets', DEEP, '['.repeat(200_000) + ']'.repeat(200_000), /nested more deeply/],
      [
        'deep in a part of a design',
        DEEP,
        withParts({ title: '['.repeat(100_000) + ']'.repeat(100_000) }),
        /nested more deeply/,
      ],
      ['__proto__ at the top', PROTO, withParts({}).replace('{', '{"__proto__":{"polluted":1},'), /__proto__/],
      ['__proto__ deep inside', PROTO, withParts({ order: '{"__proto__":{"polluted":1}}' }), /__proto__/],
      ['a part called constructor', PROTO, withParts({ constructor: '{"prototype":{"polluted":1}}' }), /"constructor"/],
      ['options of a motif called toString', PROTO, withMotif('{"toString":1}'), undefined],
      ['a number beyond all numbers', `${JSON_RFC}, section 6`, withLine('x', '1e999'), /line-1/],
      [
        'a number of a million digits',
        `${JSON_RFC}, section 6; ${SIZE}`,
        withLine('x', '9'.repeat(1_000_000)),
        /line-1/,
      ],
      ['NaN written as such', `${JSON_RFC}, section 6`, withLine('x', 'NaN'), /cannot be read/],
      ['NaN as a text', TYPES, withLine('x', '"NaN"'), /line-1.*number/],
      ['Infinity as a diameter', `${JSON_RFC}, section 6`, withLine('capHeight', '-1e400'), /line-1/],
      ['a title of 10 MB', SIZE, withParts({ title: `"${'A'.repeat(10_000_000)}"` }), /title.*too long/],
      ['a file of 17 MB', SIZE, ' '.repeat(17_000_000), /larger than 16 MB/],
      ['elements that are no list', TYPES, withParts({ elements: '{"length":3}' }), /list/],
      ['a million elements', SIZE, withParts({ elements: `[${'0,'.repeat(999_999)}0]` }), /elements/],
      [
        'the same key twice',
        `${JSON_RFC}, section 4`,
        withParts({}).replace('{', '{"title":7,'),
        /Line 1 .*"title" a second time/,
      ],
      ['a drawing that is not 1 high', SIZE, withArtwork('M0 0L1 0L1 100000L0 100000Z'), /drawing of element 1/],
      ['a drawing of one line without end', SIZE, withArtwork('M0 0L1e300 0L1e300 1e300Z'), /drawing of element 1/],
      ['a drawing far from its frame', SIZE, withArtwork('M900 0L901 0L901 1L900 1Z'), /drawing of element 1/],
      ['borders of 720 dashes, 200 times', SIZE, withParts({ elements: manyBorders(200) }), /144000 shapes/],
      ['an unpaired surrogate', `${JSON_RFC}, section 8.2`, withLine('text', '"A\\ud800B"'), undefined],
      ['a zero byte in a text', `${JSON_RFC}, section 7; CWE-158`, withLine('text', '"A\\u0000B"'), undefined],
      ['signs that turn the reading direction', BIDI, withParts({ title: '"\\u202egnol\\u2066 name"' }), undefined],
      [
        'a part whose name turns the reading direction',
        BIDI,
        withParts({ '\u202e\u0007liar': '1' }),
        /\u25a1\u25a1liar|\u25a1.*liar/,
      ],
      [
        'markup as a title',
        'OWASP XSS Filter Evasion Cheat Sheet',
        withParts({ title: '"<img src=x onerror=alert(1)>"' }),
        undefined,
      ],
      [
        'markup in a drawing',
        'OWASP XSS Filter Evasion Cheat Sheet',
        withArtwork('M0 0\\"/><script>alert(1)</script>'),
        /drawing|element/i,
      ],
      [
        'a font id that is a path',
        'CWE-22, path traversal',
        withParts({ ownFaces: '[{"id":"own:../../e","name":"x","data":""}]' }),
        /font|own/i,
      ],
    ] as const
  ).map(([name, source, text, says]) => ({ name, source, read: () => file(text), says })),
];

function withLine(key: string, value: string): string {
  const line = JSON.stringify({ ...LINE, [key]: '@' }).replace('"@"', () => value);
  return withParts({ elements: `[${line}]` });
}

function withMotif(options: string): string {
  const motif = '"kind":"motif","id":"m","motif":"star","x":0,"y":0,"size":0.5,"turnDeg":0,"around":"once"';
  return withParts({ elements: `[{${motif},"options":${options}}]` });
}

function withArtwork(path: string): string {
  const art = '"kind":"artwork","id":"a","name":"a.svg","x":0,"y":0,"size":0.5,"turnDeg":0,"around":"once"';
  return withParts({ elements: `[{${art},"path":"${path}"}]` });
}

function manyBorders(count: number): string {
  const border = { kind: 'border', style: 'dashes', inner: 0.8, outer: 0.9, count: 720 };
  return JSON.stringify(Array.from({ length: count }, (_, i) => ({ ...border, id: `b${i}` })));
}

const GOOD_LINK = linkOf(emptyDesign());

function linkOf(design: Design): string {
  const packed = packDesign(design);
  return 'fragment' in packed ? packed.fragment : '';
}

/** A link that holds whatever bytes, packed as ours are. */
function linkAround(bytes: Uint8Array, sum = crc32(bytes)): string {
  const packed = deflateSync(bytes, { level: 9, dictionary: strToU8(DICTIONARY_1) });
  const head = new Uint8Array(4);
  new DataView(head.buffer).setUint32(0, sum);
  return `#d1.${toBase64Url(Uint8Array.of(...head, ...packed))}`;
}

export const LINK_CASES: readonly DocumentCase[] = [
  ...(
    [
      ['a bomb of 4 MB in 4 kB', BOMB, linkAround(new Uint8Array(4_000_000)), /far more than a design/],
      [
        'just above the size that is unpacked',
        BOMB,
        linkAround(new Uint8Array(256 * 1024 + 1)),
        /far more than a design/,
      ],
      ['a link of a million letters', SIZE, `#d1.${'A'.repeat(1_000_000)}`, /longer than a design/],
      ['cut off in the middle', 'RFC 4648, section 3', GOOD_LINK.slice(0, GOOD_LINK.length / 2), /cut off or damaged/],
      ['cut off by one letter', 'RFC 4648, section 3', GOOD_LINK.slice(0, -1), /cut off or damaged/],
      ['a full stop of the sentence around it', 'RFC 3986, appendix C', `${GOOD_LINK}.`, undefined],
      ['letters of another alphabet', 'RFC 4648, section 3.3', `${GOOD_LINK.slice(0, -4)}+/==`, /cut off or damaged/],
      ['bits where none should be', 'RFC 4648, section 3.5', '#d1.AAAAAAB', /cut off or damaged/],
      ['nothing in it', 'RFC 1951, section 3.2.3', '#d1.', /cut off or damaged/],
      ['a block of no known kind', 'RFC 1951, section 3.2.3', '#d1.AAAAAAf__w', /cut off or damaged/],
      ['a wrong sum', 'ISO/IEC 3309, frame check', linkAround(strToU8('{}'), 7), /cut off or damaged/],
      [
        'text that is no UTF-8',
        'RFC 3629, section 10',
        linkAround(Uint8Array.of(0x22, 0xc0, 0xaf, 0x22)),
        /cut off or damaged/,
      ],
      ['a form of packing not known yet', 'RFC 9413, section 4', '#d99.AAAA', /version of Bridgehead/],
      ['a design with __proto__', PROTO, linkAround(strToU8(withParts({ order: '{"__proto__":1}' }))), /__proto__/],
      ['250,000 brackets', DEEP, linkAround(strToU8('['.repeat(250_000))), /nested more deeply/],
      ['a whole one', 'RFC 9110, section 4.1', GOOD_LINK, undefined],
    ] as const
  ).map(([name, source, fragment, says]) => ({
    name,
    source,
    says,
    read: () => {
      const read = readLink(fragment);
      return 'problem' in read ? read.problem : undefined;
    },
  })),
];

const OSWALD = new Uint8Array(readFileSync(packageFile('@fontsource/oswald', 'files/oswald-latin-700-normal.woff')));

/** The good font with numbers of its first table's record changed (WOFF 1.0, section 4). */
function withRecord(change: (view: DataView) => void): Uint8Array {
  const bytes = OSWALD.slice();
  change(new DataView(bytes.buffer));
  return bytes;
}

/** A WOFF of one table that unpacks to far more than it says, or than anybody has room for. */
function woffBomb(says: number): Uint8Array {
  const packed = zlibSync(new Uint8Array(50_000_000), { level: 9 });
  const bytes = new Uint8Array(64 + packed.length);
  const view = new DataView(bytes.buffer);
  bytes.set(strToU8('wOFF'));
  view.setUint32(4, 0x00010000);
  view.setUint32(8, bytes.length);
  view.setUint16(12, 1);
  view.setUint32(16, says + 28);
  bytes.set(strToU8('glyf'), 44);
  view.setUint32(48, 64);
  view.setUint32(52, packed.length);
  view.setUint32(56, says);
  bytes.set(packed, 64);
  return bytes;
}

export const FONT_CASES: readonly DocumentCase[] = [
  ...(
    [
      ['a bomb that says what it is', `${BOMB}; ${WOFF}`, woffBomb(4_000_000_000), /damaged|cut short|large|MB/],
      ['a bomb that says less than it holds', `${BOMB}; ${WOFF}`, woffBomb(1000), /damaged/],
      ['65,535 tables', FONT, withRecord((v) => v.setUint16(12, 65_535)), /damaged|cut short/],
      ['a table that begins behind the end', FONT, withRecord((v) => v.setUint32(48, 0xfffffff0)), /damaged|cut short/],
      ['a table that ends behind the end', FONT, withRecord((v) => v.setUint32(52, 0x7fffffff)), /damaged|cut short/],
      ['no tables at all', FONT, Uint8Array.of(0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), /damaged/],
      [
        'a web page in place of a font',
        'OWASP File Upload Cheat Sheet',
        strToU8('<!doctype html><script>alert(1)</script>'),
        /web page/,
      ],
      [
        'a program in place of a font',
        'OWASP File Upload Cheat Sheet',
        strToU8('MZ\u0090\u0000\u0003'.repeat(40)),
        /not a font/,
      ],
      ['a font of 7 MB', SIZE, new Uint8Array(7_000_000), /at most 6 MB/],
    ] as const
  ).map(([name, source, bytes, says]) => ({
    name,
    source,
    says,
    read: () => {
      const read = ownFaceFrom(bytes, '../../etc/"><script>.ttf');
      return 'problem' in read ? read.problem : undefined;
    },
  })),
];
