import { writeSpecSheet } from '../../../geometry/files/paper/spec-sheet.ts';
import type { ProofAsked } from '../../../geometry/proof/proof-asked.ts';
import { writeProof } from '../../../geometry/proof/write-proof.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';

/** What is bundled for the browser: proof and spec sheet, base64, of what comes as text. */
export async function papersInBrowser(askedText: string, regular: string, bold: string): Promise<string[]> {
  const asked = JSON.parse(askedText) as ProofAsked;
  const fonts = { regular: bytesOf(regular), bold: bytesOf(bold) };
  const proof = await writeProof({ ...asked, book: BUILT_IN }, fonts);
  const sheet = await writeSpecSheet(asked.design, asked.plates, fonts, BUILT_IN);
  return [proof, sheet].map((bytes) => btoa(Array.from(bytes, (b) => String.fromCharCode(b)).join('')));
}

function bytesOf(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
}
