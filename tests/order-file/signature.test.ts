import { generateKeyPairSync, sign, webcrypto } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { checkOrder } from '../../geometry/command/check-order.ts';
import { makeOrderKey, signerOf } from '../../geometry/command/order-key.ts';
import { shopOf } from '../../geometry/command/read-files.ts';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { checkSignature, signatureText } from '../../geometry/order-file/signature.ts';
import { type OrderSigner, writeOrderFile } from '../../geometry/order-file/write-order-file.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { resealedPaper } from './damages.ts';
import { type MadeOrder, madeOrder, smallDesign } from './sound-order.ts';

const SUBTLE = webcrypto.subtle as SubtleCrypto;
const folder = mkdtempSync(join(tmpdir(), 'key-'));
afterAll(() => rmSync(folder, { recursive: true }));

let signer: OrderSigner;
let order: MadeOrder;
let line: string;
beforeAll(async () => {
  line = (await makeOrderKey(folder)).at(-1)!;
  signer = await signerOf(join(folder, 'order-key.pem'));
  order = await madeOrder(smallDesign('OB'), signer);
});

function sound(bytes: Uint8Array) {
  const read = readOrderFile(bytes);
  if (read.kind !== 'sound') throw new Error(read.faults.map((f) => f.problem).join(' '));
  return read;
}

it('a key is for its owner alone, never replaced, and its public half fits shop.json', async () => {
  expect(statSync(join(folder, 'order-key.pem')).mode & 0o777).toBe(0o600);
  await expect(makeOrderKey(folder)).rejects.toThrow(/never replaced/);
  expect(line).toBe(`  "orderKey": "${signer.key}",`);
  writeFileSync(join(folder, 'none.pem'), 'hello');
  await expect(signerOf(join(folder, 'none.pem'))).rejects.toThrow(/is no key/);
});

it('verifies as published: RFC 8032, section 7.1, test 2', async () => {
  const hex = (text: string) => Buffer.from(text, 'hex');
  const key = hex('3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c');
  const signature =
    '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00';
  const imported = await SUBTLE.importKey('raw', key, 'Ed25519', false, ['verify']);
  expect(await SUBTLE.verify('Ed25519', imported, hex(signature), hex('72'))).toBe(true);
});

it('is right for the order, and for no other manifest or key', async () => {
  const read = sound(order.bytes);
  expect(await checkSignature(read, SUBTLE)).toBe('signed');
  expect(await checkSignature(read, undefined)).toBe('unchecked');
  expect(await checkSignature(sound((await madeOrder(smallDesign('OB'))).bytes), SUBTLE)).toBe('unsigned');
  const manifestBytes = read.manifestBytes.map((byte, i) => (i === 40 ? byte ^ 1 : byte));
  expect(await checkSignature({ ...read, manifestBytes }, SUBTLE)).toBe('wrong');
  // Signed for another use of the same key: without the line that orders begin with.
  const { privateKey } = generateKeyPairSync('ed25519');
  const bare = { ...signer, sign: (m: Uint8Array) => sign(null, m, privateKey).toString('base64') };
  expect(await checkSignature(sound(writeOrderFile({ ...order, signer: bare }).bytes), SUBTLE)).toBe('wrong');
  expect(signatureText(read.signature!)).toContain(signer.key);
});

it('is told by the command: whose key, whose not, not signed, wrong; papers forged and sealed again too', async () => {
  const shop = { ...(await shopOf('geometry/shop/starting-shop.json')), orderKey: signer.key };
  const { orderKey: _, ...keyless } = shop;
  const told = async (bytes: Uint8Array, by: typeof keyless | undefined): Promise<string> => {
    const file = join(folder, 'order.zip');
    writeFileSync(file, bytes);
    const lines: string[] = [];
    const log = vi.spyOn(console, 'log').mockImplementation((text: string) => void lines.push(text));
    const status = await checkOrder(file, BUILT_IN, by);
    log.mockRestore();
    return `${status}\n${lines.join('\n')}`;
  };
  const right = await told(order.bytes, shop);
  expect(right).toMatch(/^0\n/);
  expect(right).toContain(`Signed by ${shop.name}.`);
  expect(right).toMatch(/The same of spec-sheet\.pdf, findings\.json, proof\.pdf\./);
  expect(right).toMatch(/not compared: order\.txt/);
  expect(await told(order.bytes, keyless)).toContain(`not the key of ${shop.name}`);
  expect(await told(order.bytes, undefined)).toContain('--shop FILE would tell');
  expect(await told(writeOrderFile(order).bytes, shop)).toContain('Not signed: nothing proves who wrote this order.');
  const altered = { ...signer, sign: (m: Uint8Array) => flip(signer.sign(m)) };
  expect(await told(writeOrderFile({ ...order, signer: altered }).bytes, shop)).toMatch(/^2\n[\s\S]*does not fit/);
  for (const paper of ['proof.pdf', 'spec-sheet.pdf']) {
    expect(await told(resealedPaper(order, paper), shop)).toMatch(new RegExp(`not compared: .*${paper}`));
  }
  expect(await told(resealedPaper(order, 'findings.json'), shop)).toMatch(/^2\n[\s\S]*findings\.json/);
  expect(readFileSync(join(folder, 'order-key.pem'), 'utf8')).toContain('PRIVATE KEY');
});

function flip(base64: string): string {
  const bytes = Buffer.from(base64, 'base64');
  bytes[5]! ^= 1;
  return bytes.toString('base64');
}
