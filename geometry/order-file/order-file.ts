import type { Approval, Design } from '../design/schema.ts';
import type { Signature } from './signature.ts';
import type { Refused } from '../sentences/wording.ts';

/**
 * An order that is handed over without a server: one ZIP with the design, the files to cut by, the papers, and
 * manifest.json, which says of every other file how long it is and its SHA-256 (FIPS 180-4).
 *
 * It proves that the files are as they were written and belong together. It does not prove who wrote them: whoever can
 * write a whole new order can also write a new manifest. What was agreed is told by the fingerprint, of which every paper
 * shows sixteen digits.
 */

export const ORDER_FORMAT = 'bridgehead-order';
/** 2: files carry the whole fingerprint, where those of 1 carry its first 8 digits. */
export const ORDER_VERSION = 2;

export const DESIGN_NAME = 'design.json';
export const MANIFEST_NAME = 'manifest.json';

/** cut: what a machine cuts by; findings: what was said of the plates, for whoever reads it next. */
export type OrderRole = 'cut' | 'proof' | 'spec-sheet' | 'findings' | 'other';

export interface OrderFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly role: OrderRole;
}

/** What the manifest says of one file. */
export interface ListedFile {
  readonly name: string;
  readonly role: OrderRole | 'design';
  readonly bytes: number;
  /** 64 hex digits. */
  readonly sha256: string;
}

export interface Manifest {
  readonly format: typeof ORDER_FORMAT;
  readonly version: 1 | typeof ORDER_VERSION;
  readonly title: string;
  /** Of what is cut, 64 hex digits. */
  readonly fingerprint: string;
  /** The shop's own rules that the fingerprint counts; absent where they are those that ship. */
  readonly shopRules?: object;
  readonly approval?: Approval;
  /** Public key that the order is signed by (signature.ts). */
  readonly signer?: string;
  readonly files: readonly ListedFile[];
}

/** What is wrong with an order, of which file, and what to do. */
export interface OrderFault extends Refused {
  readonly file?: string;
}

export interface SoundOrder {
  readonly kind: 'sound';
  readonly design: Design;
  readonly manifest: Manifest;
  /** All but design and manifest. */
  readonly files: readonly OrderFile[];
  /**
   * What carries too few digits of the fingerprint to be the order's for sure (an order of version 1, an approval of
   * those days), by name: a person compares it by eye.
   */
  readonly byEye: readonly string[];
  /** As it stands in the archive; checkSignature says whether it is right. */
  readonly signature?: Signature;
  /** What was signed. */
  readonly manifestBytes: Uint8Array;
}

export interface UnsoundOrder {
  readonly kind: 'unsound';
  /** One at least. */
  readonly faults: readonly OrderFault[];
  /** False where the file is no ZIP, or one without a manifest: something else was chosen. */
  readonly isOrder: boolean;
  /** Only to look at: nothing says that it is the one that was ordered. */
  readonly design?: Design;
}

/** An order with twelve plates has forty files. */
export const MOST_FILES = 64;
/** The largest file of an order is a design with fonts of one's own (LONGEST_DESIGN_TEXT). */
export const MOST_FILE_BYTES = 24_000_000;
export const MOST_UNPACKED_BYTES = 64_000_000;
export const MOST_ORDER_BYTES = 40_000_000;
/** The densest of our own files shrink to a twentieth; deflate ends at 1 to 1032. */
export const MOST_RATIO = 200;
/** Ratios of small files say nothing. */
export const RATIO_FROM_BYTES = 1_000_000;
/** About ten times the largest that can be written. */
export const MOST_MANIFEST_BYTES = 200_000;
