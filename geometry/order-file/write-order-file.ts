/**
 * How an order proves itself. write-order-file.ts writes it, always to the same bytes; order-file.ts says its form and limits.
 *
 * 1. read-order-file.ts trusts nothing: zip-list.ts and zip-local.ts take only an archive laid out as adapters/zip-stream.ts
 *    lays it out, unpack-order-file.ts unpacks in memory up to the limits.
 * 2. Every file is held against the manifest, the design against its fingerprint, cut files and papers against what they
 *    say of themselves (marks.ts), the approval against both.
 *    A signature (signature.ts) says by whose key; without one nothing says who wrote the order.
 * 3. check-made-again.ts finds what was changed and then sealed: only the cut files, freshly made, tell.
 *
 * A new way to harm an order is a record in tests/order-file/damages.ts; test and figure take it from there. A writer that
 * lays out the archive otherwise needs a new ORDER_VERSION, or old orders are told as packed by others.
 */

import { zipOf } from '../adapters/zip-stream.ts';
import { fingerprintOf } from '../design/fingerprint.ts';
import { printInName } from '../design/show-fingerprint.ts';
import type { Design } from '../design/schema.ts';
import { designText } from '../design/write-design.ts';
import { safePart } from '../files/names.ts';
import { isCutName, nameTrouble, sameOnDisk } from './file-name.ts';
import { normalizeApproval, manifestText, sha256Of } from './manifest.ts';
import {
  DESIGN_NAME,
  MANIFEST_NAME,
  type Manifest,
  MOST_FILES,
  ORDER_FORMAT,
  ORDER_VERSION,
  type OrderFile,
} from './order-file.ts';
import { SIGNATURE_NAME, signatureText } from './signature.ts';
import { isArchive } from './unpack-order-file.ts';

/** What an order is written from. */
export interface OrderContents {
  readonly design: Design;
  /** DXF and SVG of its plates, role `cut`. */
  readonly cut: readonly OrderFile[];
  /** Proof, spec sheet, findings and what else goes along. */
  readonly papers: readonly OrderFile[];
  /** fingerprintOf(design, ownRules), 64 hex digits. */
  readonly fingerprint: string;
  /** The shop's own rules, where they are others than those that ship (ownRules in geometry/stock/). */
  readonly ownRules?: object | undefined;
  /** Absent: the order is not signed. */
  readonly signer?: OrderSigner | undefined;
}

/** A key of the shop. */
export interface OrderSigner {
  /** The public half (signature.ts). */
  readonly key: string;
  /** Signs signedMessage of the manifest; 64 bytes, base64. */
  sign(manifest: Uint8Array): string;
}

/**
 * The whole order as one ZIP; the same order gives the same bytes. Throws RangeError for what no caller may ask: a
 * fingerprint that is not the design's, two files of one name, a name that is no plain one (`nameTrouble`), a file to
 * cut by that is not said to be one, an archive in the archive. What readOrder would find fault with for other reasons (an approval of another
 * design) is written as it is.
 */
export function writeOrderFile(asked: OrderContents): { readonly name: string; readonly bytes: Uint8Array } {
  const { design, fingerprint, ownRules, cut, papers, signer } = asked;
  if (fingerprintOf(design, ownRules) !== fingerprint) throw new RangeError('the fingerprint is not the design’s');
  const files = [...cut, ...papers];
  demandPlainNames(files);
  const text = encode(designText(design));
  const manifest: Manifest = {
    format: ORDER_FORMAT,
    version: ORDER_VERSION,
    title: design.title,
    fingerprint,
    ...(ownRules && { shopRules: ownRules }),
    ...(design.approval && { approval: normalizeApproval(design.approval) }),
    ...(signer && { signer: signer.key }),
    files: [
      { name: DESIGN_NAME, role: 'design', bytes: text.length, sha256: sha256Of(text) },
      ...files.map(({ name, role, bytes }) => ({ name, role, bytes: bytes.length, sha256: sha256Of(bytes) })),
    ],
  };
  const listed = encode(manifestText(manifest));
  const signature = signer && encode(signatureText({ key: signer.key, signature: signer.sign(listed) }));
  return {
    name: nameOrderFile(design.title, fingerprint),
    bytes: zipOf([
      { name: MANIFEST_NAME, bytes: listed },
      ...(signature ? [{ name: SIGNATURE_NAME, bytes: signature }] : []),
      { name: DESIGN_NAME, bytes: text },
      ...files,
    ]),
  };
}

/** `<title>-<16 digits>-order.zip` */
export function nameOrderFile(title: string, fingerprint: string): string {
  return `${safePart(title, 'stencil')}-${printInName(fingerprint)}-order.zip`;
}

function demandPlainNames(files: readonly OrderFile[]): void {
  const taken = new Set([DESIGN_NAME, MANIFEST_NAME, SIGNATURE_NAME]);
  for (const { name, role, bytes } of files) {
    if (nameTrouble(name) !== undefined) throw new RangeError(`no plain name: ${name}`);
    if (taken.has(sameOnDisk(name))) throw new RangeError(`two files are called ${name}`);
    if (isCutName(name) !== (role === 'cut')) throw new RangeError(`${name} is said to be ${role}`);
    if (isArchive(bytes)) throw new RangeError(`${name} is an archive`);
    taken.add(sameOnDisk(name));
  }
  if (taken.size > MOST_FILES) throw new RangeError('too many files');
}

function encode(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
