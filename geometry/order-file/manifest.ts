import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Approval } from '../design/schema.ts';
import { nameTrouble, sameOnDisk } from './file-name.ts';
import { isRecord } from './is-record.ts';
import {
  DESIGN_NAME,
  MANIFEST_NAME,
  type ListedFile,
  type Manifest,
  MOST_FILES,
  ORDER_FORMAT,
  ORDER_VERSION,
} from './order-file.ts';
import { isOrderKey, SIGNATURE_NAME } from './signature.ts';

/** 64 hex digits (FIPS 180-4). */
export function sha256Of(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** The text of manifest.json: one manifest, one text, so that nothing can stand in it unseen. */
export function manifestText({
  format,
  version,
  title,
  fingerprint,
  shopRules,
  approval,
  signer,
  files,
}: Manifest): string {
  const record = {
    format,
    version,
    title,
    fingerprint,
    shopRules,
    approval: approval && normalizeApproval(approval),
    signer,
    files: files.map(({ name, role, bytes, sha256 }) => ({ name, role, bytes, sha256 })),
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}

/** The same of what a design carries, whatever the order of its parts. */
export function normalizeApproval({ name, at, fingerprint, how }: Approval): Approval {
  return { name, at, fingerprint, how };
}

/** The manifest, `newer` for one of a later version, or undefined for anything that manifestText would not have written. */
export function readManifest(text: string): Manifest | { readonly newer: number } | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isRecord(value) || value['format'] !== ORDER_FORMAT) return undefined;
  const { version } = value;
  if (typeof version === 'number' && Number.isInteger(version) && version > ORDER_VERSION) return { newer: version };
  return isManifest(value) && manifestText(value) === text ? value : undefined;
}

const ROLES: readonly string[] = ['design', 'cut', 'proof', 'spec-sheet', 'findings', 'other'];

function isManifest(value: Record<string, unknown>): value is Record<string, unknown> & Manifest {
  const { version, title, fingerprint, shopRules, approval, signer, files } = value;
  return (
    (version === 1 || version === ORDER_VERSION) &&
    typeof title === 'string' &&
    isHash(fingerprint) &&
    (shopRules === undefined || isFlat(shopRules, DEEPEST_RULES)) &&
    (approval === undefined || isApproval(approval)) &&
    (signer === undefined || (typeof signer === 'string' && isOrderKey(signer))) &&
    Array.isArray(files) &&
    files.length <= MOST_FILES &&
    files.every(isListed) &&
    areNamesPlain(files)
  );
}

function isListed(value: unknown): value is ListedFile {
  if (!isRecord(value)) return false;
  const { name, role, bytes, sha256 } = value;
  return (
    typeof name === 'string' &&
    typeof role === 'string' &&
    ROLES.includes(role) &&
    Number.isSafeInteger(bytes) &&
    isHash(sha256)
  );
}

/** Each name a plain one and there once, and just the design listed as such. */
function areNamesPlain(files: readonly ListedFile[]): boolean {
  const names = new Set([MANIFEST_NAME, SIGNATURE_NAME, ...files.map(({ name }) => sameOnDisk(name))]);
  return (
    names.size === files.length + 2 &&
    files.every(({ name, role }) => nameTrouble(name) === undefined && (name === DESIGN_NAME) === (role === 'design'))
  );
}

/** Rules are numbers and words, in records of records at most. */
const DEEPEST_RULES = 4;

function isFlat(value: unknown, deepest: number): boolean {
  if (!isRecord(value) || deepest === 0) return false;
  return Object.values(value).every((part) => part === null || typeof part !== 'object' || isFlat(part, deepest - 1));
}

function isApproval(value: unknown): value is Approval {
  if (!isRecord(value)) return false;
  const { name, at, fingerprint, how } = value;
  return [name, at, fingerprint].every((part) => typeof part === 'string') && (how === 'link' || how === 'paper');
}

function isHash(value: unknown): value is string {
  return typeof value === 'string' && /^[0-9a-f]{64}$/.test(value);
}
