import { showFingerprint } from '../design/show-fingerprint.ts';
import { readFile } from 'node:fs/promises';
import { loadFaces } from '../../fonts/node-faces.ts';
import { approvalOf } from '../files/approval.ts';
import { oneLine } from '../files/plain-text.ts';
import { checkMadeAgain } from '../order-file/check-made-again.ts';
import type { OrderFault, SoundOrder } from '../order-file/order-file.ts';
import { readOrderFile } from '../order-file/read-order-file.ts';
import { planPlates } from '../pipeline/plan-plates.ts';
import { createStore } from '../pipeline/solve-store.ts';
import { ownRules } from '../stock/own-rules.ts';
import type { StockBook } from '../stock/stock-book.ts';
import { cutFiles } from './make-order.ts';
import { Refusal, reasonOf } from './refusal.ts';

/**
 * Reads an order, makes its cut files again and compares them. Gives the exit status: 0 sound, 2 unsound, with a line
 * for each fault on stdout. Throws a Refusal where the file cannot be read or is no order.
 */
export async function checkOrder(file: string, book: StockBook): Promise<number> {
  const bytes = await readFile(file).catch((error: unknown) => {
    throw new Refusal(`${file}: cannot be read (${reasonOf(error)}).`);
  });
  const read = readOrderFile(bytes);
  if (read.kind === 'unsound') {
    const [first] = read.faults;
    if (!read.isOrder) throw new Refusal(`${file}: ${first?.problem ?? 'cannot be read.'}`);
    return tell(read.faults);
  }
  const faults = await madeAgain(read, book);
  if (faults.length > 0) return tell(faults);
  const { design, manifest, files, byEye } = read;
  const cut = files.filter(({ role }) => role === 'cut').length;
  console.log(`${oneLine(design.title, 120) || 'Stencil'}  ${showFingerprint(manifest.fingerprint)}`);
  console.log(`Order verified: ${files.length + 1} files are as they were written.`);
  console.log(`Made again from the design, ${cut} files to cut by come out the same, byte for byte.`);
  if (byEye.length > 0) {
    console.log(`Compare by eye: too few digits of the fingerprint on ${byEye.map((n) => oneLine(n, 150)).join(', ')}`);
  }
  console.log(approvalOf(design, manifest.fingerprint).text);
  return 0;
}

async function madeAgain(order: SoundOrder, book: StockBook): Promise<readonly OrderFault[]> {
  const { design } = order;
  const { faces, problems } = await loadFaces(design);
  const [face] = problems;
  if (face) throw new Refusal(`The order cannot be made again: ${oneLine(face.problem, 500)}`);
  const encoder = new TextEncoder();
  const fresh = cutFiles(design, planPlates(design, faces, createStore(), book));
  const files = fresh.map(({ name, text }) => ({ name, bytes: encoder.encode(text) }));
  return checkMadeAgain(order, files, ownRules(design, book));
}

function tell(faults: readonly OrderFault[]): number {
  console.log('Not as it was written:');
  for (const { problem } of faults) console.log(`  ${oneLine(problem, 500)}`);
  return 2;
}
