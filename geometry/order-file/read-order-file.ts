import { beginsAlike, sameFingerprint } from '../approval/same-fingerprint.ts';
import { orderWords, standingOf } from '../approval/standing.ts';
import { canonicalJson } from '../design/canonical-json.ts';
import { fingerprintOf } from '../design/fingerprint.ts';
import { readDesign } from '../design/read-design.ts';
import type { Design } from '../design/schema.ts';
import { showFingerprint } from '../design/show-fingerprint.ts';
import { visible } from '../design/visible.ts';
import { fault, faultOf, quoteTexts } from './fault.ts';
import { isCutName } from './file-name.ts';
import { normalizeApproval, readManifest, sha256Of } from './manifest.ts';
import { markOf } from './marks.ts';
import {
  DESIGN_NAME,
  MANIFEST_NAME,
  type Manifest,
  MOST_MANIFEST_BYTES,
  ORDER_VERSION,
  type OrderFault,
  type OrderFile,
  type SoundOrder,
  type UnsoundOrder,
} from './order-file.ts';
import { readSignature, SIGNATURE_NAME, type Signature } from './signature.ts';
import { unpackOrderFile } from './unpack-order-file.ts';

/**
 * Reads an order and proves it: the archive is one that an order is written as; manifest.json lists every file, and each
 * is as it was; the design has the fingerprint that the order was written for, and cut files and papers say the same;
 * the approval is the design's own and of that fingerprint. Anything else makes it unsound, with a sentence for each
 * file. Only the first fault of a file is told: the others follow from it.
 *
 * It does not find a cut file that was changed and then listed anew: see checkMadeAgain.
 */
export function readOrderFile(bytes: Uint8Array): SoundOrder | UnsoundOrder {
  const { files, faults: packed } = unpackOrderFile(bytes);
  const manifest = manifestOf(files, packed);
  const design = designOf(files, packed);
  const faults = [...packed];
  const seal: Seal = 'manifest' in manifest ? sealOf(manifest.manifest, files) : {};
  if (seal.fault) faults.push(seal.fault);
  if ('fault' in manifest && manifest.fault) faults.push(manifest.fault);
  if ('fault' in design && design.fault) faults.push(design.fault);
  if ('manifest' in manifest) {
    faults.push(...faultsOfFiles(manifest.manifest, files));
    if ('design' in design) faults.push(...faultsOfDesign(manifest.manifest, design.design));
  }
  const told = firstOfEach(faults);
  if (told.length === 0 && 'manifest' in manifest && 'design' in design) {
    return {
      kind: 'sound',
      design: design.design,
      manifest: manifest.manifest,
      files: listFiles(manifest.manifest, files),
      manifestBytes: files.get(MANIFEST_NAME)!,
      ...(seal.signature && { signature: seal.signature }),
      byEye: listByEye(manifest.manifest, design.design, files),
    };
  }
  const isOrder = !told.some(({ words }) => NO_ORDER.has(words.key));
  return { kind: 'unsound', faults: told, isOrder, ...('design' in design && { design: design.design }) };
}

/** What is said of files that are something else. */
const NO_ORDER = new Set<string>(['orderFault.notZip', 'orderFault.notOrder', 'orderFault.large']);

type Found<T> = T | { readonly fault: OrderFault | undefined };

function manifestOf(
  files: ReadonlyMap<string, Uint8Array>,
  packed: readonly OrderFault[],
): Found<{ readonly manifest: Manifest }> {
  const bytes = files.get(MANIFEST_NAME);
  // What is wrong with the archive has been told; without such a fault it is simply no order.
  if (!bytes) return { fault: packed.length > 0 ? undefined : fault('orderFault.notOrder') };
  const text = bytes.length <= MOST_MANIFEST_BYTES ? utf8(bytes) : undefined;
  const read = text === undefined ? undefined : readManifest(text);
  if (!read) return { fault: faultOf(MANIFEST_NAME, 'orderFault.manifestUnreadable') };
  if ('newer' in read) {
    const values = { version: read.newer, newest: ORDER_VERSION };
    return { fault: faultOf(MANIFEST_NAME, 'orderFault.manifestNewer', values) };
  }
  return { manifest: read };
}

function designOf(
  files: ReadonlyMap<string, Uint8Array>,
  packed: readonly OrderFault[],
): Found<{ readonly design: Design }> {
  const bytes = files.get(DESIGN_NAME);
  if (!bytes) {
    const isTold = packed.length > 0 || !files.has(MANIFEST_NAME);
    return { fault: isTold ? undefined : faultOf(DESIGN_NAME, 'orderFault.noDesign') };
  }
  const text = utf8(bytes);
  if (text === undefined) return { fault: faultOf(DESIGN_NAME, 'orderFault.damaged') };
  const read = readDesign(text);
  if ('design' in read) return read;
  return { fault: faultOf(DESIGN_NAME, 'orderFault.designUnreadable', { reason: read.words }) };
}

/** Every file as the manifest has it, and none besides. */
function faultsOfFiles(manifest: Manifest, files: ReadonlyMap<string, Uint8Array>): OrderFault[] {
  const faults: OrderFault[] = [];
  const names = new Set([MANIFEST_NAME, SIGNATURE_NAME, ...manifest.files.map(({ name }) => name)]);
  for (const { name, role, bytes: length, sha256 } of manifest.files) {
    const bytes = files.get(name);
    if (!bytes) faults.push(faultOf(name, 'orderFault.missing'));
    else if (bytes.length !== length || sha256Of(bytes) !== sha256) faults.push(faultOf(name, 'orderFault.altered'));
    else if (isCutName(name) !== (role === 'cut')) faults.push(faultOf(name, 'orderFault.role'));
    else if (role !== 'design') faults.push(...faultsOfMark(manifest, name, role === 'cut', bytes));
  }
  for (const name of files.keys()) if (!names.has(name)) faults.push(faultOf(name, 'orderFault.extra'));
  return faults;
}

/** A file to cut by says what it cuts; a paper that says it says the same. */
function faultsOfMark(manifest: Manifest, name: string, isCut: boolean, bytes: Uint8Array): OrderFault[] {
  const found = markOf(name, bytes);
  const { version, fingerprint } = manifest;
  if (found === undefined) return isCut ? [faultOf(name, 'orderFault.cutUnmarked')] : [];
  if (sameFingerprint(found, fingerprint) || (version === 1 && beginsAlike(found, fingerprint))) return [];
  const values = { found: showFingerprint(visible(found)), fingerprint: showFingerprint(fingerprint) };
  return [faultOf(name, isCut ? 'orderFault.cutOther' : 'orderFault.paperOther', values)];
}

interface Seal {
  readonly signature?: Signature;
  readonly fault?: OrderFault;
}

/** The signature, of the key that the manifest names; nothing for an order that is not signed. */
function sealOf({ signer }: Manifest, files: ReadonlyMap<string, Uint8Array>): Seal {
  const bytes = files.get(SIGNATURE_NAME);
  if (!bytes) return signer === undefined ? {} : { fault: faultOf(SIGNATURE_NAME, 'orderFault.signatureGone') };
  const signature = readSignature(utf8(bytes) ?? '');
  if (signature?.key !== signer || !signature) return { fault: faultOf(SIGNATURE_NAME, 'orderFault.signatureWrong') };
  return { signature };
}

/** What agrees, and carries too few digits to prove it. */
function listByEye(
  { fingerprint, files: listed }: Manifest,
  design: Design,
  files: ReadonlyMap<string, Uint8Array>,
): string[] {
  const marked = listed.flatMap(({ name, role }) => {
    const bytes = files.get(name);
    const found = bytes && role !== 'design' ? markOf(name, bytes) : undefined;
    return found !== undefined && !sameFingerprint(found, fingerprint) ? [name] : [];
  });
  return standingOf(design, fingerprint).kind === 'short' ? [DESIGN_NAME, ...marked] : marked;
}

function faultsOfDesign(manifest: Manifest, design: Design): OrderFault[] {
  const faults: OrderFault[] = [];
  const found = fingerprintOf(design, manifest.shopRules);
  if (found !== manifest.fingerprint) {
    const values = { found: showFingerprint(found), fingerprint: showFingerprint(manifest.fingerprint) };
    faults.push(faultOf(DESIGN_NAME, 'orderFault.designOther', values));
  }
  if (design.title !== manifest.title) {
    faults.push(
      faultOf(DESIGN_NAME, 'orderFault.titleOther', quoteTexts({ title: manifest.title, found: design.title })),
    );
  }
  const { approval } = design;
  if (canonicalJson(approval ? normalizeApproval(approval) : {}) !== canonicalJson(manifest.approval ?? {})) {
    faults.push(faultOf(MANIFEST_NAME, 'orderFault.approvalDiffers'));
  }
  const standing = standingOf(design, found);
  if (standing.kind === 'approved' && standing.order.kind === 'changed') {
    faults.push(faultOf(DESIGN_NAME, 'orderFault.orderOther', { order: orderWords(standing.order).words }));
  }
  if (approval && standing.kind === 'changed') {
    const values = quoteTexts({ name: approval.name, approved: showFingerprint(approval.fingerprint) });
    faults.push(faultOf(DESIGN_NAME, 'orderFault.approvalOther', { ...values, fingerprint: showFingerprint(found) }));
  }
  return faults;
}

function listFiles(manifest: Manifest, files: ReadonlyMap<string, Uint8Array>): OrderFile[] {
  return manifest.files.flatMap(({ name, role }) => {
    const bytes = files.get(name);
    return bytes && role !== 'design' ? [{ name, role, bytes }] : [];
  });
}

/** The first of each file; all that are of none. */
function firstOfEach(faults: readonly OrderFault[]): OrderFault[] {
  const told = new Set<string>();
  return faults.filter(({ file }) => {
    if (file === undefined) return true;
    if (told.has(file)) return false;
    told.add(file);
    return true;
  });
}

function utf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
