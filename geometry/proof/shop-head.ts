import type { ShopBook } from '../shop/shop-book.ts';
import { INK, type PdfPage } from '../files/paper/pdf-page.ts';
import { TYPE } from './flow.ts';

/** So much room the head of the shop takes from the top of the page. */
export const SHOP_HEAD_MM = 34;
const LOGO = { widthMm: 46, heightMm: 15 };

/** Logo or name at the left, address and how to reach the shop at the right. */
export function drawShopHead(page: PdfPage, shop: ShopBook, left: number, width: number): void {
  const drawn = shop.logo && drawLogo(page, shop, left, 13);
  if (drawn) page.line(shop.name, left, 13 + LOGO.heightMm + 4.5, width / 2, { ...TYPE.label, colour: INK.char });
  else page.line(shop.name, left, 19, width / 2, { size: 15, bold: true });
  const { phone, email, web } = shop.contact;
  const lines = [...shop.address, ...[phone, email, web].flatMap((part) => (part === undefined ? [] : [part]))];
  lines.slice(0, 7).forEach((line, i) => {
    page.line(line, left + width / 2, 15.4 + i * 3.5, width / 2, { ...TYPE.label, align: 'right' });
  });
}

/** False for a picture that cannot be read. */
function drawLogo(page: PdfPage, { logo, name }: ShopBook, x: number, y: number): boolean {
  const { doc, tags } = page;
  if (logo === undefined) return false;
  if (logo.kind === 'picture') {
    try {
      // Opened before it is drawn: a broken one must not leave half a mark on the page.
      const picture = (doc as unknown as { openImage(data: string): unknown }).openImage(logo.data);
      tags.picture(name, () => doc.image(picture as string, x, y, { fit: [LOGO.widthMm, LOGO.heightMm] }));
      return true;
    } catch {
      return false;
    }
  }
  const [left, top, width, height] = logo.viewBox;
  const scale = Math.min(LOGO.widthMm / width, LOGO.heightMm / height);
  tags.picture(name, () => {
    doc.save();
    doc.translate(x, y).scale(scale).translate(-left, -top);
    doc.rect(left, top, width, height).clip();
    for (const { d, colour } of logo.paths) doc.path(d).fillColor(colour).fill('even-odd');
    doc.restore();
  });
  return true;
}
