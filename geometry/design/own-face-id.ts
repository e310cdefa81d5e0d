import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/**
 * A font of one's own is called by its data: `own:` and the SHA-256 of the file, 64 hex digits. Designs of before carry
 * its first 8, which two fonts may share: what is kept by a font's name is kept by its data with them (contentKey).
 */
export function ownFaceId(bytes: Uint8Array): string {
  return `own:${bytesToHex(sha256(bytes))}`;
}

export const OWN_FACE_ID = /^own:(?:[a-f0-9]{8}|[a-f0-9]{64})$/;

/** Whether a font is called by its data, whole or by the first 8 digits. */
export function isCalledByData({ id, data }: { readonly id: string; readonly data: string }): boolean {
  const bytes = bytesOfBase64(data);
  return bytes !== undefined && OWN_FACE_ID.test(id) && ownFaceId(bytes).startsWith(id);
}

/** The same for the same font file, and for no other. */
export function contentKey({ id, data }: { readonly id: string; readonly data: string }): string {
  return id.length > 'own:'.length + 8 ? id : `${id}/${data}`;
}

/** Bytes of a base64 text; undefined when it is none. */
export function bytesOfBase64(text: string): Uint8Array | undefined {
  try {
    return Uint8Array.from(atob(text), (char) => char.charCodeAt(0));
  } catch {
    return undefined;
  }
}
