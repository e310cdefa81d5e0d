import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** One fingerprint for several designs on one sheet: SHA-256 of theirs in order, 64 hex digits. */
export function jointFingerprint(prints: readonly string[]): string {
  return bytesToHex(sha256(utf8ToBytes([...prints].sort().join(' '))));
}
