import { readFile } from 'node:fs/promises';
import { packageFile } from '../../fonts/node-faces.ts';
import { readDesign } from '../design/read-design.ts';
import type { Design } from '../design/schema.ts';
import { oneLine } from '../files/plain-text.ts';
import type { PageFonts } from '../files/paper/pdf-page.ts';
import { readRows, type Rows } from '../series/read-rows.ts';
import { readShop } from '../shop/read-shop.ts';
import type { ShopFile } from '../shop/shop-schema.ts';
import { BUILT_IN } from '../stock/built-in-stock.ts';
import { readStock } from '../stock/read-stock.ts';
import type { StockBook } from '../stock/stock-book.ts';
import { Refusal, reasonOf } from './refusal.ts';

/** What the command is given; each throws a Refusal that names the file. */

export async function designOf(file: string): Promise<Design> {
  const read = readDesign(await textOf(file));
  if ('problem' in read) throw refusal(file, read.problem);
  return read.design;
}

export async function bookOf(file: string | undefined): Promise<StockBook> {
  if (file === undefined) return BUILT_IN;
  const read = readStock(await textOf(file));
  if ('problem' in read) throw refusal(file, read.problem);
  return read.book;
}

export async function shopOf(file: string): Promise<ShopFile> {
  const read = readShop(await textOf(file));
  if ('problem' in read) throw refusal(file, read.problem);
  return read.file;
}

export async function rowsOf(file: string): Promise<Rows> {
  const read = readRows(await bytesOf(file));
  if ('problem' in read) throw refusal(file, read.problem);
  return read;
}

/** The faces that paper is set in. */
export async function sheetFonts(): Promise<PageFonts> {
  const face = (part: string, weight: number) =>
    readFile(packageFile('@fontsource/source-sans-3', `files/source-sans-3-${part}-${weight}-normal.woff`));
  const [regular, bold, moreRegular, moreBold] = await Promise.all([
    face('latin', 400),
    face('latin', 600),
    face('latin-ext', 400),
    face('latin-ext', 600),
  ]);
  return { regular, bold, more: { regular: moreRegular, bold: moreBold } };
}

export async function textOf(file: string): Promise<string> {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(await bytesOf(file));
}

function bytesOf(file: string): Promise<Uint8Array> {
  return readFile(file).catch((error: unknown) => {
    throw refusal(file, `cannot be read (${reasonOf(error)}).`);
  });
}

/** That names the file. */
export function refusal(file: string, why: string): Refusal {
  return new Refusal(`${file}: ${oneLine(why, 500)}`);
}
