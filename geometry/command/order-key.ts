import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject, sign } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { signedMessage } from '../order-file/signature.ts';
import type { OrderSigner } from '../order-file/write-order-file.ts';
import { refusal, textOf } from './read-files.ts';
import { reasonOf, Refusal } from './refusal.ts';

const NAME = 'order-key.pem';

/**
 * Makes a key to sign orders by: PKCS 8 in PEM (RFC 8410), readable by its owner alone, never over one that is there.
 * Gives what to print.
 */
export async function makeOrderKey(folder: string): Promise<string[]> {
  const { privateKey } = generateKeyPairSync('ed25519');
  const path = join(folder, NAME);
  try {
    await mkdir(folder, { recursive: true });
    await writeFile(path, privateKey.export({ type: 'pkcs8', format: 'pem' }), { mode: 0o600, flag: 'wx' });
  } catch (error) {
    throw new Refusal(`${path}: cannot be written (${reasonOf(error)}). A key that is there is never replaced.`);
  }
  return [
    `Written: ${path}. Keep it where only the shop can read it: whoever has it can sign as the shop.`,
    'This line goes into shop.json:',
    `  "orderKey": "${publicKey(privateKey)}",`,
  ];
}

/** Throws a Refusal where the file holds no such key. */
export async function signerOf(file: string): Promise<OrderSigner> {
  const text = await textOf(file);
  let key: KeyObject;
  try {
    key = createPrivateKey(text);
  } catch {
    throw refusal(file, 'is no key. Make one with: npm run -s shop -- key --out FOLDER');
  }
  if (key.asymmetricKeyType !== 'ed25519') throw refusal(file, 'is a key of another kind: orders take Ed25519.');
  return { key: publicKey(key), sign: (manifest) => sign(null, signedMessage(manifest), key).toString('base64') };
}

function publicKey(key: KeyObject): string {
  const { x } = createPublicKey(key).export({ format: 'jwk' });
  return `ed25519:${Buffer.from(x ?? '', 'base64url').toString('base64')}`;
}
