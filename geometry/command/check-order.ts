import { showFingerprint } from '../design/show-fingerprint.ts';
import { webcrypto } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../design/schema.ts';
import { findingsText } from '../files/findings-file.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { approvalOf } from '../files/approval.ts';
import { oneLine } from '../files/plain-text.ts';
import { checkMadeAgain } from '../order-file/check-made-again.ts';
import type { OrderFault, OrderRole, SoundOrder } from '../order-file/order-file.ts';
import { faultOf } from '../order-file/fault.ts';
import { checkSignature, type Signed, SIGNATURE_NAME } from '../order-file/signature.ts';
import { readOrderFile } from '../order-file/read-order-file.ts';
import { planPlates } from '../pipeline/plan-plates.ts';
import { createStore } from '../pipeline/solve-store.ts';
import { ownRules } from '../stock/own-rules.ts';
import type { ShopFile } from '../shop/shop-schema.ts';
import type { StockBook } from '../stock/stock-book.ts';
import { cutFiles, proof, specSheet } from './make-order.ts';
import { Refusal, reasonOf } from './refusal.ts';

/**
 * Reads an order, makes its cut files again and compares them. Gives the exit status: 0 sound, 2 unsound, with a line
 * for each fault on stdout. Throws a Refusal where the file cannot be read or is no order.
 */
export async function checkOrder(file: string, book: StockBook, shop: ShopFile | undefined): Promise<number> {
  const bytes = await readFile(file).catch((error: unknown) => {
    throw new Refusal(`${file}: cannot be read (${reasonOf(error)}).`);
  });
  const read = readOrderFile(bytes);
  if (read.kind === 'unsound') {
    const [first] = read.faults;
    if (!read.isOrder) throw new Refusal(`${file}: ${first?.problem ?? 'cannot be read.'}`);
    return tell(read.faults);
  }
  const signed = await checkSignature(read, webcrypto.subtle as SubtleCrypto);
  if (signed === 'wrong') return tell([faultOf(SIGNATURE_NAME, 'orderFault.signatureWrong')]);
  const { faults, same, told } = await madeAgain(read, book);
  if (faults.length > 0) return tell(faults);
  const { design, manifest, files, byEye } = read;
  const cut = files.filter(({ role }) => role === 'cut').length;
  console.log(`${oneLine(design.title, 120) || 'Stencil'}  ${showFingerprint(manifest.fingerprint)}`);
  console.log(`Order verified: ${files.length + 1} files are as they were written.`);
  console.log(`Made again from the design, ${cut} files to cut by come out the same, byte for byte.`);
  if (same.length > 0) console.log(`The same of ${same.join(', ')}.`);
  if (told.length > 0) console.log(`Not made again, so not compared: ${told.join(', ')}. Look at them yourself.`);
  console.log(signedWords(signed, read.signature?.key, shop));
  if (byEye.length > 0) {
    console.log(`Compare by eye: too few digits of the fingerprint on ${byEye.map((n) => oneLine(n, 150)).join(', ')}`);
  }
  const { text, order } = approvalOf(design, manifest.fingerprint);
  for (const line of [text, order]) if (line !== '') console.log(line);
  return 0;
}

/** Cut files and papers made again. same: papers that come out byte for byte; told: those that nobody could make again. */
async function madeAgain(
  order: SoundOrder,
  book: StockBook,
): Promise<{ readonly faults: readonly OrderFault[]; readonly same: string[]; readonly told: string[] }> {
  const { design, manifest } = order;
  const { faces, problems } = await loadFaces(design);
  const [face] = problems;
  if (face) throw new Refusal(`The order cannot be made again: ${oneLine(face.problem, 500)}`);
  const encoder = new TextEncoder();
  const planned = planPlates(design, faces, createStore(), book);
  const fresh = cutFiles(design, planned);
  const files = fresh.map(({ name, text }) => ({ name, bytes: encoder.encode(text) }));
  const faults = [...checkMadeAgain(order, files, ownRules(design, book))];
  const [same, told]: [string[], string[]] = [[], []];
  for (const { name, role, bytes } of order.files) {
    if (role === 'cut') continue;
    if (await isMadeAgain(role, bytes, design, planned, book)) same.push(name);
    // Findings are the same in all languages; a paper may be in one, or hold prices, that are not known here.
    else if (role === 'findings' && manifest.version > 1) faults.push(faultOf(name, 'orderFault.madeOther'));
    else told.push(name);
  }
  return { faults, same, told };
}

/** Whether the command itself would write this paper: in English, on either size of paper. */
async function isMadeAgain(
  role: OrderRole,
  bytes: Uint8Array,
  design: Design,
  planned: readonly PlannedPlate[],
  book: StockBook,
): Promise<boolean> {
  if (role === 'findings') return isSame(bytes, new TextEncoder().encode(findingsText(design, planned, [])));
  for (const paper of ['a4', 'letter'] as const) {
    if (role === 'spec-sheet' && isSame(bytes, await specSheet(design, planned, book, paper))) return true;
    if (role === 'proof' && isSame(bytes, await proof(design, planned, book, { paper, tiles: false }))) return true;
  }
  return false;
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}

function signedWords(signed: Signed, key: string | undefined, shop: ShopFile | undefined): string {
  if (signed === 'unsigned' || key === undefined) return 'Not signed: nothing proves who wrote this order.';
  if (signed === 'unchecked') return 'Signed, and this machine cannot check the signature.';
  if (shop?.orderKey === key) return `Signed by ${oneLine(shop.name, 200)}.`;
  const whose = shop ? `not the key of ${oneLine(shop.name, 200)}` : 'whose key that is, --shop FILE would tell';
  return `Signed by the key ${key}: ${whose}.`;
}

function tell(faults: readonly OrderFault[]): number {
  console.log('Not as it was written:');
  for (const { problem } of faults) console.log(`  ${oneLine(problem, 500)}`);
  return 2;
}
