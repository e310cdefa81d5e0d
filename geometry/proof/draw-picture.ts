import type { PdfPage } from '../files/paper/pdf-page.ts';
import type { BarrelPicture } from './barrel-picture.ts';

/** A picture about cx, cy, so large that it is sideMm wide and high. */
export function drawPicture({ doc }: PdfPage, picture: BarrelPicture, cx: number, cy: number, sideMm: number): void {
  doc.save();
  doc.translate(cx, cy).scale(sideMm / (2 * picture.reachMm));
  for (const { d, fill, stroke, width = 0, opacity = 1 } of picture.paths) {
    if (d === '') continue;
    doc.opacity(opacity);
    if (fill !== undefined) doc.path(d).fillColor(fill).fill();
    if (stroke !== undefined) doc.path(d).lineWidth(width).lineJoin('round').strokeColor(stroke).stroke();
  }
  doc.restore();
}
