import { encode } from 'uqr';
import type { Design } from '../../design/schema.ts';
import { oneLine } from '../plain-text.ts';
import { INK, type PdfPage } from './pdf-page.ts';

/** A longer title would only make the signs of the code smaller. */
const LONGEST_TITLE = 60;

/**
 * What the code on a sheet says: `bridgehead:` and the whole fingerprint (64 hex digits), a semicolon, the title.
 * fingerprint: the one that the plates carry.
 */
export function codeText(design: Design, fingerprint: string): string {
  return `bridgehead:${fingerprint};${oneLine(design.title, LONGEST_TITLE)}`;
}

/** A QR code (ISO/IEC 18004), level M, as squares of ink; sideMm without the four light modules that must stay around it. */
export function drawQrCode({ doc }: PdfPage, text: string, x: number, y: number, sideMm: number): void {
  const { data, size } = encode(text, { ecc: 'M', border: 0 });
  const module = sideMm / size;
  // Dark modules of a row that touch are one bar, or hairlines of paper would show between them.
  data.forEach((row, r) => {
    for (let from = 0; from < size; from++) {
      if (!row[from]) continue;
      let to = from;
      while (row[to]) to++;
      doc.rect(x + from * module, y + r * module, (to - from) * module, module * 1.02);
      from = to;
    }
  });
  doc.fillColor(INK.char).fill();
}
