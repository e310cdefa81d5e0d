import { resolve } from 'node:path';
import { readShop } from '../shop/read-shop.ts';
import { checkShop } from '../shop/check-shop.ts';
import { publicShop } from '../shop/public-shop.ts';
import type { ShopFile } from '../shop/shop-schema.ts';
import { atLine } from '../stock/file-faults.ts';
import { readStock } from '../stock/read-stock.ts';
import type { StockFile } from '../stock/stock-schema.ts';
import { refusal, textOf } from './read-files.ts';
import { Refusal } from './refusal.ts';
import { splitArguments } from './split-arguments.ts';
import { writerFor } from './write-files.ts';

const USAGE =
  'npm run -s shop -- check FILE [--stock FILE] or npm run -s shop -- publish FILE [--stock FILE] --out FOLDER or npm run -s shop -- key --out FOLDER';

interface ShopAsked {
  readonly file: string;
  readonly stock?: string;
  /** Absent: only checked. */
  readonly folder?: string;
}

/** Checks a shop file, and publishes it when that is asked. Gives what to print; throws a Refusal. */
export async function publishShop(args: readonly string[]): Promise<string[]> {
  const asked = readAsked(args);
  const { file, stock } = await filesOf(asked);
  const sound = `${asked.file}: sound${stock ? `, and so is ${asked.stock} with it` : ''}.`;
  if (asked.folder === undefined) return [sound];
  const written = { 'shop.json': publicShop(file).shop, ...(stock && { 'stock.json': publicShop(file, stock).stock }) };
  for (const name of Object.keys(written)) {
    const path = resolve(asked.folder, name);
    if ([asked.file, asked.stock].some((own) => own !== undefined && resolve(own) === path)) {
      throw new Refusal(`${path} is the shop’s own file. Publish into another folder.`);
    }
  }
  const write = await writerFor(asked.folder);
  for (const [name, value] of Object.entries(written)) await write(name, `${JSON.stringify(value, null, 2)}\n`);
  return [sound, `Written to ${asked.folder}, without inner costs: ${Object.keys(written).join(', ')}`];
}

async function filesOf(asked: ShopAsked): Promise<{ file: ShopFile; stock?: StockFile }> {
  const text = await textOf(asked.file);
  const shop = readShop(text);
  if ('problem' in shop) throw refusal(asked.file, shop.problem);
  if (asked.stock === undefined) return { file: shop.file };
  if (shop.file.stock)
    throw new Refusal(`${asked.file} holds a stock of its own, so --stock ${asked.stock} would not count.`);
  const stock = readStock(await textOf(asked.stock));
  if ('problem' in stock) throw refusal(asked.stock, stock.problem);
  const fault = checkShop(shop.file, stock.file);
  if (fault) throw refusal(asked.file, atLine(text.replace(/^\uFEFF/, ''), fault).problem);
  return { file: shop.file, stock: stock.file };
}

function readAsked(args: readonly string[]): ShopAsked {
  const [verb, ...rest] = args;
  if (verb !== 'check' && verb !== 'publish') throw new Refusal(`Say check, publish or key. Use: ${USAGE}`);
  const { file, values } = splitArguments(rest, {
    file: 'shop file',
    values: { '--stock': 'a name', '--out': 'a name' },
    flags: [],
    usage: USAGE,
  });
  const [stock, folder] = [values.get('--stock'), values.get('--out')];
  if (file === undefined) throw new Refusal(`Say which shop file. Use: ${USAGE}`);
  if ((verb === 'publish') !== (folder !== undefined)) {
    throw new Refusal(`--out goes with publish, and publish with --out. Use: ${USAGE}`);
  }
  return { file, ...(stock !== undefined && { stock }), ...(folder !== undefined && { folder }) };
}
