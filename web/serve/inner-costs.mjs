import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ROOT } from './install.mjs';

/** The files that ship are open to anybody: their costs are examples. By the path of the address. */
const SHIPPED = {
  '/stock.json': join(ROOT, 'geometry', 'stock', 'starting-stock.json'),
  '/shop.json': join(ROOT, 'geometry', 'shop', 'starting-shop.json'),
};

/** True when the text of a shop's file at that path still holds what `npm run shop -- publish` takes out, or is unreadable. */
export function innerCostsIn(path, text) {
  if (!Object.hasOwn(SHIPPED, path) || text === readFileSync(SHIPPED[path], 'utf8')) return false;
  try {
    const file = JSON.parse(text.replace(/^\uFEFF/, ''));
    return path === '/stock.json' ? inStock(file) : inShop(file);
  } catch {
    // Nobody can say what is in it.
    return true;
  }
}

// The last answer for each file, until the file changes.
const judged = new Map();

/** innerCostsIn for what findFile gives; read again only when it has changed. */
export async function holdsInnerCosts({ named, file }) {
  // Some file systems take large and small letters as one.
  const asked = named.toLowerCase();
  if (!Object.hasOwn(SHIPPED, asked)) return false;
  const mark = `${file.path} ${file.size} ${file.mtimeMs}`;
  if (judged.get(asked)?.mark !== mark) {
    judged.set(asked, { mark, costs: innerCostsIn(asked, await readFile(file.path, 'utf8')) });
  }
  return judged.get(asked).costs;
}

function inStock({ work, materials = [], processes = [], sheets = [] }) {
  return (
    work !== undefined ||
    materials.some(({ pricePerKg }) => pricePerKg !== undefined) ||
    processes.some(({ machine }) => machine?.setUpMin !== undefined || machine?.ratePerHour !== undefined) ||
    sheets.some(({ prices }) => prices !== undefined)
  );
}

function inShop({ private: notes, prices, stock }) {
  return notes !== undefined || holdsSource(prices) || (stock !== undefined && inStock(stock));
}

function holdsSource(value) {
  if (typeof value !== 'object' || value === null) return false;
  return 'source' in value || Object.values(value).some(holdsSource);
}
