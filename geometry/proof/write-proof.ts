/**
 * The proof: what the customer looks at, reads letter by letter and signs before anything is cut.
 *
 * In: what is asked (proof-asked.ts) and the two faces to set it in. Out: the bytes of a tagged PDF, all vector; the same
 * input gives the same bytes on every machine.
 */
import { oneLine } from '../files/plain-text.ts';
import { PAPERS } from '../files/page-size.ts';
import { createPage, pageBytes, type SheetFonts } from '../files/sheet-page.ts';
import { barrelPicture } from './barrel-picture.ts';
import { drawPicture } from './draw-picture.ts';
import type { ProofAsked } from './proof-asked.ts';

export async function writeProof(asked: ProofAsked, fonts: SheetFonts): Promise<Uint8Array> {
  const { design, plates, language } = asked;
  const fingerprint = plates[0]?.plate.fingerprint ?? '';
  const title = oneLine(design.title, 120) || 'Stencil';
  const size = PAPERS[asked.page];
  const page = createPage({ title, subject: `Fingerprint ${fingerprint}`, fonts, size, language });
  const first = plates[0];
  page.line(title, size.marginMm, 30, size.widthMm - 2 * size.marginMm, { size: 24, bold: true, tag: 'H1' });
  page.line(fingerprint, size.marginMm, 38, 60, { size: 10 });
  if (first) {
    const picture = barrelPicture(design, first, asked.paint);
    page.tags.picture(title, () => drawPicture(page, picture, size.widthMm / 2, 130, 150));
  }
  return pageBytes(page);
}
