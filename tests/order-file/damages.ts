import { createHash } from 'node:crypto';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { designText } from '../../geometry/design/write-design.ts';
import { writeOrderFile } from '../../geometry/order-file/write-order-file.ts';
import { manifestText, readManifest } from '../../geometry/order-file/manifest.ts';
import type { ListedFile, Manifest } from '../../geometry/order-file/order-file.ts';
import { SIGNATURE_NAME, signatureText } from '../../geometry/order-file/signature.ts';
import { type RawFile, rawZip } from './raw-zip.ts';
import { approved, encode, type MadeOrder } from './sound-order.ts';

/** A way in which an order is harmed, or made to do harm. */
export interface Damage {
  readonly name: string;
  /** Where such a thing is written of. */
  readonly source: string;
  readonly bytes: Uint8Array;
  /** The file that must be named; undefined where no single one is to blame. */
  readonly file: string | undefined;
  /** What is said of it. */
  readonly says: RegExp;
}

const FIELDS = 'PKWARE APPNOTE 6.3.10';
const HASH = 'FIPS 180-4';
const PATHS = 'CWE-22, path traversal; OWASP Path Traversal';
const BOMB = 'CWE-409, improper handling of highly compressed data';
const SIGNS = 'Unicode Technical Report 36, sections 2 and 3.5';
const OWN = 'the form of an order (geometry/order-file/order.ts)';

const DESIGN = 'design.json';
const MANIFEST = 'manifest.json';

const KEY = `ed25519:${'A'.repeat(43)}=`;
const OTHER_KEY = `ed25519:${'B'.repeat(42)}A=`;

function signature(key: string): RawFile {
  return { name: SIGNATURE_NAME, bytes: encode(signatureText({ key, signature: 'AA==' })) };
}

/** Every kind of damage to an order; other: an order of another design, sound in itself. */
export function damagesOf(order: MadeOrder, other: MadeOrder): readonly Damage[] {
  const parts = new Map<string, Uint8Array>([
    [DESIGN, encode(designText(order.design))],
    ...[...order.cut, ...order.papers].map(({ name, bytes }) => [name, bytes] as const),
  ]);
  const manifest = manifestIn(order.bytes);
  const [dxf, svg] = [order.cut[0]!.name, order.cut[1]!.name];
  const otherDxf = other.cut[0]!;
  const otherDesign = encode(designText(other.design));
  const raw = (files: ReadonlyMap<string, Uint8Array>, listed: Manifest = manifest): RawFile[] => [
    { name: MANIFEST, bytes: encode(manifestText(listed)) },
    ...[...files].map(([name, bytes]) => ({ name, bytes })),
  ];
  /** The files with one of them otherwise, the manifest as it was. */
  const swapped = (name: string, bytes: Uint8Array) => rawZip(raw(new Map(parts).set(name, bytes)));
  /** The same, and listed anew, as somebody would who knows the form. */
  const forged = (name: string, bytes: Uint8Array, listed: Partial<Manifest> = {}) => {
    const files = new Map(parts).set(name, bytes);
    return rawZip(raw(files, { ...manifest, ...listed, files: listedAnew(manifest.files, files) }));
  };
  /** One file entered in the archive otherwise. */
  const entered = (name: string, otherwise: Partial<RawFile>) =>
    rawZip(raw(parts).map((file) => (file.name === name ? { ...file, ...otherwise } : file)));
  const added = (file: RawFile) => rawZip([...raw(parts), file]);
  const designSaying = (part: object) => encode(designText({ ...order.design, ...part }));
  const plain = rawZip(raw(parts));
  const zeros = new Uint8Array(2_000_000);
  const otherApproval = approved(order.design, other.fingerprint).approval!;
  const approval = { ...manifest.approval!, name: 'Somebody else' };
  const nested = rawZip([{ name: 'inner.bin', bytes: zeros }]);

  return [
    // What is in the files.
    ...[...parts.keys()].map((name): Damage => {
      const bytes = flipped(parts.get(name)!, 0.6);
      return {
        name: `a byte of ${name} flipped`,
        source: HASH,
        bytes: swapped(name, bytes),
        file: name,
        says: /SHA-256|cannot be read/,
      };
    }),
    ...[MANIFEST, DESIGN, dxf, 'spec-sheet.pdf', 'proof.pdf'].map((name): Damage => {
      const bytes = flippedAt(order.bytes, dataAt(order.bytes, name) + 5);
      return {
        name: `a packed byte of ${name} flipped`,
        source: FIELDS,
        bytes,
        file: name,
        says: /damaged|unpacks to more/,
      };
    }),
    {
      name: 'the design swapped for another',
      source: HASH,
      bytes: swapped(DESIGN, otherDesign),
      file: DESIGN,
      says: /SHA-256/,
    },
    {
      name: 'the design swapped and listed anew',
      source: OWN,
      bytes: forged(DESIGN, otherDesign),
      file: DESIGN,
      says: /another design/,
    },
    {
      name: 'a text changed and listed anew',
      source: OWN,
      bytes: forged(DESIGN, designSaying({ elements: other.design.elements })),
      file: DESIGN,
      says: /another design/,
    },
    {
      name: 'the title changed and listed anew',
      source: OWN,
      bytes: forged(DESIGN, designSaying({ title: 'Other' })),
      file: DESIGN,
      says: /titled/,
    },
    {
      name: 'another fingerprint in the manifest',
      source: OWN,
      bytes: rawZip(raw(parts, { ...manifest, fingerprint: other.fingerprint })),
      file: DESIGN,
      says: /another design/,
    },
    {
      name: 'a cut file of another order',
      source: HASH,
      bytes: swapped(dxf, otherDxf.bytes),
      file: dxf,
      says: /SHA-256/,
    },
    {
      name: 'a cut file of another order, listed anew',
      source: OWN,
      bytes: forged(dxf, otherDxf.bytes),
      file: dxf,
      says: /says of itself that it cuts/,
    },
    {
      name: 'a cut file without its mark, listed anew',
      source: OWN,
      bytes: forged(svg, encode('<svg xmlns="http://www.w3.org/2000/svg"/>')),
      file: svg,
      says: /does not say which design/,
    },
    {
      name: 'the PDF of another order, listed anew',
      source: OWN,
      bytes: forged('spec-sheet.pdf', paper(other, 'spec-sheet.pdf')),
      file: 'spec-sheet.pdf',
      says: /paper of another design/,
    },
    {
      name: 'the proof of another order, listed anew',
      source: OWN,
      bytes: forged('proof.pdf', paper(other, 'proof.pdf')),
      file: 'proof.pdf',
      says: /paper of another design/,
    },
    {
      name: 'the findings of another order, listed anew',
      source: OWN,
      bytes: forged('findings.json', paper(other, 'findings.json')),
      file: 'findings.json',
      says: /paper of another design/,
    },
    {
      name: 'a cut file listed as a paper',
      source: OWN,
      bytes: rawZip(
        raw(parts, { ...manifest, files: manifest.files.map((f) => (f.name === dxf ? { ...f, role: 'other' } : f)) }),
      ),
      file: dxf,
      says: /something that it is not/,
    },
    // Which files there are.
    {
      name: 'a file missing',
      source: OWN,
      bytes: rawZip(raw(parts).filter(({ name }) => name !== svg)),
      file: svg,
      says: /is missing/,
    },
    {
      name: 'the design missing',
      source: OWN,
      bytes: rawZip(raw(parts).filter(({ name }) => name !== DESIGN)),
      file: DESIGN,
      says: /no design|missing/,
    },
    {
      name: 'the manifest missing',
      source: OWN,
      bytes: rawZip(raw(parts).slice(1)),
      file: undefined,
      says: /no manifest/,
    },
    {
      name: 'a file too many',
      source: OWN,
      bytes: added({ name: 'more.dxf', bytes: otherDxf.bytes }),
      file: 'more.dxf',
      says: /somebody put it in/,
    },
    {
      name: 'a file twice',
      source: FIELDS,
      bytes: added({ name: dxf, bytes: otherDxf.bytes }),
      file: dxf,
      says: /more than once/,
    },
    {
      name: 'a file twice but for capitals',
      source: FIELDS,
      bytes: added({ name: dxf.toUpperCase(), bytes: otherDxf.bytes }),
      file: dxf.toUpperCase(),
      says: /capital letters/,
    },
    {
      name: 'an unreadable manifest',
      source: OWN,
      bytes: rawZip([{ name: MANIFEST, bytes: encode('{"format"') }, ...raw(parts).slice(1)]),
      file: MANIFEST,
      says: /not as Bridgehead writes it/,
    },
    {
      name: 'a manifest with a second fingerprint',
      source: 'RFC 8259, section 4: names in an object should be unique',
      bytes: rawZip([
        {
          name: MANIFEST,
          bytes: encode(manifestText(manifest).replace('"title"', `"fingerprint": "${other.fingerprint}",\n  "title"`)),
        },
        ...raw(parts).slice(1),
      ]),
      file: MANIFEST,
      says: /not as Bridgehead writes it/,
    },
    {
      name: 'a manifest of a version to come',
      source: OWN,
      bytes: rawZip([
        { name: MANIFEST, bytes: encode(manifestText(manifest).replace('"version": 2', '"version": 3')) },
        ...raw(parts).slice(1),
      ]),
      file: MANIFEST,
      says: /newer Bridgehead/,
    },
    // Who approved what.
    {
      name: 'another name in the approval of the manifest',
      source: OWN,
      bytes: rawZip(raw(parts, { ...manifest, approval })),
      file: MANIFEST,
      says: /who approved what/,
    },
    {
      name: 'another name in the approval of the design, listed anew',
      source: OWN,
      bytes: forged(DESIGN, designSaying({ approval })),
      file: MANIFEST,
      says: /who approved what/,
    },
    {
      name: 'an approval of another design',
      source: OWN,
      bytes: forged(DESIGN, designSaying({ approval: otherApproval }), { approval: otherApproval }),
      file: DESIGN,
      says: /approval of O\. Marrow is for fingerprint/,
    },
    // Who signed it.
    {
      name: 'the signature taken off',
      source: OWN,
      bytes: rawZip(raw(parts, { ...manifest, signer: KEY })),
      file: SIGNATURE_NAME,
      says: /its signature is missing/,
    },
    {
      name: 'a signature of another key than the order names',
      source: OWN,
      bytes: rawZip([...raw(parts, { ...manifest, signer: KEY }), signature(OTHER_KEY)]),
      file: SIGNATURE_NAME,
      says: /does not fit/,
    },
    {
      name: 'a signature put to an order that names none',
      source: OWN,
      bytes: rawZip([...raw(parts), signature(KEY)]),
      file: SIGNATURE_NAME,
      says: /does not fit/,
    },
    {
      name: 'a signature in another form',
      source: 'RFC 8259, section 4',
      bytes: rawZip([...raw(parts, { ...manifest, signer: KEY }), { ...signature(KEY), bytes: encode('{"key":1}') }]),
      file: SIGNATURE_NAME,
      says: /does not fit/,
    },
    // How it is packed.
    {
      name: 'cut short',
      source: FIELDS,
      bytes: order.bytes.subarray(0, order.bytes.length * 0.7),
      file: undefined,
      says: /stops in the middle/,
    },
    {
      name: 'bytes before it',
      source: `${FIELDS}, 4.1.9 (self-extracting archives)`,
      bytes: Buffer.concat([Buffer.from('MZ'), plain]),
      file: undefined,
      says: /belong to none of its files/,
    },
    {
      name: 'bytes between its files and its list',
      source: FIELDS,
      bytes: between(plain),
      file: undefined,
      says: /belong to none of its files/,
    },
    {
      name: 'bytes behind it',
      source: FIELDS,
      bytes: Buffer.concat([plain, Buffer.from('more')]),
      file: undefined,
      says: /belong to none of its files/,
    },
    {
      name: 'a comment',
      source: `${FIELDS}, 4.3.16`,
      bytes: rawZip(raw(parts), 'Approved by all'),
      file: undefined,
      says: /belong to none of its files/,
    },
    {
      name: 'bytes hidden behind a packed file',
      source: FIELDS,
      bytes: entered(svg, { packed: Buffer.concat([deflateRawSync(parts.get(svg)!), Buffer.from('hidden')]) }),
      file: svg,
      says: /more bytes are hidden/,
    },
    {
      name: 'another name at the file than in the list',
      source: `${FIELDS}, 4.3.7 and 4.3.12`,
      bytes: entered(dxf, { local: { name: `X${dxf.slice(1)}` } }),
      file: dxf,
      says: /two programs could find two different files/,
    },
    {
      name: 'another way of packing at the file than in the list',
      source: `${FIELDS}, 4.3.7 and 4.3.12`,
      bytes: entered(svg, { local: { method: 0 } }),
      file: svg,
      says: /two programs could find/,
    },
    {
      name: 'two entries of the list for one place',
      source: 'overlapping files: Fifield, A better zip bomb, WOOT 2019',
      bytes: overlapping(plain),
      file: DESIGN,
      says: /two programs could find/,
    },
    {
      name: 'a wrong check sum',
      source: `${FIELDS}, 4.4.7`,
      bytes: entered(dxf, { crc: 0x12345678 }),
      file: dxf,
      says: /damaged/,
    },
    {
      name: 'a wrong length',
      source: `${FIELDS}, 4.4.9`,
      bytes: entered(dxf, { size: parts.get(dxf)!.length + 1 }),
      file: dxf,
      says: /damaged/,
    },
    {
      name: 'a file locked with a password',
      source: `${FIELDS}, 4.4.4 bit 0`,
      bytes: entered(svg, { flags: 1 }),
      file: svg,
      says: /password/,
    },
    {
      name: 'an unknown way of packing',
      source: `${FIELDS}, 4.4.5`,
      bytes: entered('order.txt', { method: 12 }),
      file: 'order.txt',
      says: /in a way that no order is/,
    },
    {
      name: 'the form for large archives',
      source: `${FIELDS}, 4.3.15`,
      bytes: wide(plain),
      file: undefined,
      says: /for very large ones/,
    },
    {
      name: 'another name in an extra field',
      source: `${FIELDS}, 4.6.9 (Unicode path)`,
      bytes: entered(svg, { extra: Buffer.from('7570050001deadbe', 'hex') }),
      file: svg,
      says: /otherwise than Bridgehead does/,
    },
    {
      name: 'another name in an extra field of its own header only',
      source: `${FIELDS}, 4.6.9 (Unicode path)`,
      bytes: entered(svg, { local: { extra: Buffer.from('7570050001deadbe', 'hex') } }),
      file: svg,
      says: /otherwise than Bridgehead does/,
    },
    {
      name: 'a link in place of a file',
      source: 'CWE-59, link following; APPNOTE 4.4.15',
      bytes: entered('order.txt', { madeBy: 0x0314, attributes: 0xa1ff0000 }),
      file: 'order.txt',
      says: /otherwise than Bridgehead does/,
    },
    // What it unpacks to.
    {
      name: 'a bomb: a file that says how large it is',
      source: BOMB,
      bytes: entered('order.txt', { bytes: zeros }),
      file: 'order.txt',
      says: /unpacks to more/,
    },
    {
      name: 'a bomb: a file that says it is small',
      source: BOMB,
      bytes: entered('order.txt', { bytes: zeros, size: 26 }),
      file: 'order.txt',
      says: /unpacks to more/,
    },
    {
      name: 'a bomb in an archive in the archive',
      source: BOMB,
      bytes: forged('order.txt', nested),
      file: 'order.txt',
      says: /archive in the archive/,
    },
    {
      name: 'sixty-five files',
      source: 'CWE-400, uncontrolled resource consumption',
      bytes: rawZip(Array.from({ length: 65 }, (_, i) => ({ name: `f${i}.txt`, bytes: encode('x') }))),
      file: undefined,
      says: /more files than any order/,
    },
    // What they are called.
    ...PATH_NAMES.map((name): Damage => ({
      name: `a path for a name: ${JSON.stringify(name)}`,
      source: PATHS,
      bytes: added({ name, bytes: encode('x') }),
      file: name,
      says: /a path out of the folder/,
    })),
    ...SIGN_NAMES.map((name): Damage => ({
      name: `signs that pass for others: ${JSON.stringify(name)}`,
      source: SIGNS,
      bytes: added({ name, bytes: encode('x') }),
      file: name.replace(/[\p{Cc}\p{Cf}]/gu, '□'),
      says: /signs that can pass for others/,
    })),
    ...SYSTEM_NAMES.map((name): Damage => ({
      name: `a name that systems keep: ${JSON.stringify(name)}`,
      source: 'Microsoft, Naming Files, Paths, and Namespaces',
      bytes: added({ name, bytes: encode('x') }),
      file: name,
      says: /some systems keep for themselves/,
    })),
  ];
}

/** A paper changed, its mark left, and all listed anew: sound by itself, found when it is made again, or told that it was not. */
export function resealedPaper(order: MadeOrder, name: string): Uint8Array {
  const papers = order.papers.map((file) => (file.name === name ? { ...file, bytes: forgedPaper(file.bytes) } : file));
  return writeOrderFile({ ...order, papers }).bytes;
}

/** One byte behind the closing mark of a PDF, or a word of the findings: its fingerprint stays. */
function forgedPaper(bytes: Uint8Array): Uint8Array {
  const text = Buffer.from(bytes).toString('latin1');
  return Buffer.from(text.startsWith('%PDF') ? `${text}\n` : text.replace('"ready"', '"READY"'), 'latin1');
}

/** The cut file changed, its mark left, and all listed anew: sound by itself, found when it is made again. */
export function resealed(order: MadeOrder): { readonly bytes: Uint8Array; readonly file: string } {
  const { name, bytes } = order.cut[0]!;
  const text = new TextDecoder().decode(bytes);
  const changed = encode(text.replace(/\r\n {0,2}10\r\n(-?\d)/, '\r\n 10\r\n-1$1'));
  const files = new Map<string, Uint8Array>([
    [DESIGN, encode(designText(order.design))],
    ...[...order.cut, ...order.papers].map((file) => [file.name, file.bytes] as const),
  ]).set(name, changed);
  const manifest = manifestIn(order.bytes);
  const listed = { ...manifest, files: listedAnew(manifest.files, files) };
  const raw = [...files].map(([name, bytes]) => ({ name, bytes }));
  return { bytes: rawZip([{ name: MANIFEST, bytes: encode(manifestText(listed)) }, ...raw]), file: name };
}

const PATH_NAMES = [
  '../evil.dxf',
  'a/../../evil.dxf',
  '/etc/evil.dxf',
  '..\\evil.dxf',
  'C:evil.dxf',
  '\\\\host\\evil.dxf',
  'folder/',
];
const SIGN_NAMES = [
  'pl\u0430te.dxf',
  'plate\u202Efxd.exe',
  'plate\u200B.dxf',
  'plate\u0000.dxf',
  'pl\uFF41te.dxf',
  'plate .dxf',
];
const SYSTEM_NAMES = ['aux.dxf', '.hidden.dxf', 'plate.dxf.', 'a..dxf'];

function paper(order: MadeOrder, name: string): Uint8Array {
  return order.papers.find((file) => file.name === name)!.bytes;
}

function listedAnew(listed: readonly ListedFile[], files: ReadonlyMap<string, Uint8Array>): ListedFile[] {
  return listed.map((file) => {
    const bytes = files.get(file.name)!;
    return { ...file, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
  });
}

/** The manifest is the first file, and is read here by its place only. */
export function manifestIn(bytes: Uint8Array): Manifest {
  const text = inflated(bytes);
  const read = readManifest(text);
  if (!read || 'newer' in read) throw new Error('no manifest');
  return read;
}

function inflated(bytes: Uint8Array): string {
  return new TextDecoder().decode(inflateRawSync(bytes.subarray(30 + MANIFEST.length), { finishFlush: 2 }));
}

/** Where the packed bytes of a file begin, found by its first header. */
function dataAt(bytes: Uint8Array, name: string): number {
  return Buffer.from(bytes).indexOf(name) + name.length;
}

function flipped(bytes: Uint8Array, share: number): Uint8Array {
  return flippedAt(bytes, Math.floor(bytes.length * share));
}

export function flippedAt(bytes: Uint8Array, at: number, bit = 0): Uint8Array {
  const harmed = bytes.slice();
  harmed[at]! ^= 1 << bit;
  return harmed;
}

const LIST_AT = 16;
const END_BYTES = 22;

/** Six bytes more before the list, and the closing record knows where it is. */
function between(zip: Buffer): Buffer {
  const end = Buffer.from(zip.subarray(-END_BYTES));
  const listAt = end.readUInt32LE(LIST_AT);
  end.writeUInt32LE(listAt + 6, LIST_AT);
  return Buffer.concat([zip.subarray(0, listAt), Buffer.from('hidden'), zip.subarray(listAt, -END_BYTES), end]);
}

/** The second entry of the list points to the first one's place. */
function overlapping(zip: Buffer): Buffer {
  const harmed = Buffer.from(zip);
  const listAt = zip.readUInt32LE(zip.length - END_BYTES + LIST_AT);
  const second = zip.indexOf(Buffer.from('504b0102', 'hex'), listAt + 4);
  harmed.writeUInt32LE(0, second + 42);
  return harmed;
}

/** With the record that says where a longer closing record is (section 4.3.15). */
function wide(zip: Buffer): Buffer {
  const locator = Buffer.concat([Buffer.from('504b0607', 'hex'), Buffer.alloc(16)]);
  return Buffer.concat([zip.subarray(0, -END_BYTES), locator, zip.subarray(-END_BYTES)]);
}
