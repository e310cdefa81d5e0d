/**
 * Who sealed an order: an Ed25519 signature (RFC 8032) of its manifest, which has the SHA-256 of every file. The manifest
 * names the key too, so a signature cannot be taken off unseen. The shop keeps the private key; the public one stands in
 * its shop.json as `orderKey`: `ed25519:` and 32 bytes in base64.
 */
export interface Signature {
  readonly key: string;
  /** 64 bytes, base64. */
  readonly signature: string;
}

export const SIGNATURE_NAME = 'signature.json';
const FORMAT = 'bridgehead-signature';

/** unchecked: this machine knows no Ed25519, or the page is not on https. */
export type Signed = 'unsigned' | 'signed' | 'wrong' | 'unchecked';

const KEY = /^ed25519:[A-Za-z0-9+/]{43}=$/;

export function isOrderKey(text: string): boolean {
  return KEY.test(text);
}

/** What is signed: a line that no other use of the key begins with, then the manifest. */
export function signedMessage(manifest: Uint8Array): Uint8Array<ArrayBuffer> {
  const begin = new TextEncoder().encode('bridgehead-order\n');
  const message = new Uint8Array(begin.length + manifest.length);
  message.set(begin);
  message.set(manifest, begin.length);
  return message;
}

export function signatureText({ key, signature }: Signature): string {
  return `${JSON.stringify({ format: FORMAT, key, signature }, null, 2)}\n`;
}

/** undefined for anything that signatureText would not have written. */
export function readSignature(text: string): Signature | undefined {
  const found = /"key": "(ed25519:[A-Za-z0-9+/=]+)",\s+"signature": "([A-Za-z0-9+/=]+)"/.exec(text);
  if (!found) return undefined;
  const read = { key: found[1]!, signature: found[2]! };
  return isOrderKey(read.key) && signatureText(read) === text ? read : undefined;
}

/** subtle: WebCrypto, of the browser or of Node; undefined where the page is not on https. */
export async function checkSignature(
  { signature, manifestBytes }: { readonly signature?: Signature; readonly manifestBytes: Uint8Array },
  subtle: SubtleCrypto | undefined,
): Promise<Signed> {
  if (!signature) return 'unsigned';
  if (!subtle) return 'unchecked';
  let key: CryptoKey;
  try {
    key = await subtle.importKey('raw', bytesOf(signature.key.slice('ed25519:'.length)), 'Ed25519', false, ['verify']);
  } catch (error) {
    return error instanceof Error && error.name === 'NotSupportedError' ? 'unchecked' : 'wrong';
  }
  const isRight = await subtle.verify('Ed25519', key, bytesOf(signature.signature), signedMessage(manifestBytes));
  return isRight ? 'signed' : 'wrong';
}

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
}
