import { loadFaces } from '../../fonts/node-faces.ts';
import { cutFiles, proof, specSheet } from '../../geometry/command/make-order.ts';
import { findingsText } from '../../geometry/files/findings-file.ts';
import { newLineText } from '../../geometry/design/defaults.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { OrderFile } from '../../geometry/order-file/order-file.ts';
import { type OrderSigner, writeOrderFile } from '../../geometry/order-file/write-order-file.ts';
import { planPlates } from '../../geometry/pipeline/plan-plates.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { handDesign } from '../files/hand-plate.ts';

export interface MadeOrder {
  readonly design: Design;
  readonly fingerprint: string;
  readonly cut: readonly OrderFile[];
  readonly papers: readonly OrderFile[];
  readonly bytes: Uint8Array;
}

/** Two letters on one plate, approved: everything an order holds, worked out in a second. */
export function smallDesign(letters: string, title = 'Ottilie & Bastian'): Design {
  const text = { ...newLineText('e1', 'stardos-stencil-700'), text: letters, capHeight: 0.5 };
  const design = handDesign({
    title,
    elements: [text],
    plates: [{ id: 'p', name: 'Large', diameter: { mm: 300 }, quantity: 1 }],
    order: { who: 'Marrow Lane Perry', reference: '27-118', neededBy: '2027-06-12', notes: '' },
  });
  return approved(design);
}

export function approved(design: Design, fingerprint = fingerprintOf(design)): Design {
  return { ...design, approval: { name: 'O. Marrow', at: '2026-11-26T10:00:00.000Z', fingerprint, how: 'link' } };
}

/** The order as the page and the command make it. */
export async function madeOrder(design: Design, signer?: OrderSigner): Promise<MadeOrder> {
  const { faces, problems } = await loadFaces(design);
  const planned = planPlates(design, faces, createStore(), BUILT_IN);
  const cut = cutFiles(design, planned).map(({ name, text }) => ({ name, bytes: encode(text), role: 'cut' as const }));
  const sheet = await specSheet(design, planned, BUILT_IN);
  const papers: OrderFile[] = [
    { name: 'spec-sheet.pdf', bytes: sheet, role: 'spec-sheet' },
    { name: 'findings.json', bytes: encode(findingsText(design, planned, problems)), role: 'findings' },
    { name: 'proof.pdf', bytes: await proof(design, planned, BUILT_IN), role: 'proof' },
    { name: 'order.txt', bytes: encode('Wrapped in paper, please.\n'), role: 'other' },
  ];
  const fingerprint = fingerprintOf(design);
  return {
    design,
    fingerprint,
    cut,
    papers,
    bytes: writeOrderFile({ design, cut, papers, fingerprint, signer }).bytes,
  };
}

export function encode(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
