import { encode } from 'uqr';
import { fingerprintOf } from '../../design/fingerprint.ts';
import type { Design } from '../../design/schema.ts';
import { ownRules } from '../../stock/own-rules.ts';
import type { StockBook } from '../../stock/stock-book.ts';
import { oneLine } from '../plain-text.ts';
import { INK, type PdfPage } from './pdf-page.ts';

/** A longer title would only make the signs of the code smaller. */
const LONGEST_TITLE = 60;

/**
 * What the code on a sheet says: `bridgehead:` and the whole fingerprint (64 hex digits), a semicolon, the title.
 * short: the fingerprint that the plates carry; where the design's is another, it alone is said.
 */
export function codeText(design: Design, short: string, book: StockBook): string {
  const whole = fingerprintOf(design, ownRules(design, book));
  return `bridgehead:${whole.startsWith(short) ? whole : short};${oneLine(design.title, LONGEST_TITLE)}`;
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
