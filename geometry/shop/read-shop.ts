import type { core } from 'zod/mini';
import { contradictionIn } from '../stock/contradictions.ts';
import { atLine, schemaFault, valueOfJson } from '../stock/file-faults.ts';
import { SHOP_EN } from '../sentences/shop-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { checkShop } from './check-shop.ts';
import { bookOfShop, type ShopBook } from './shop-book.ts';
import { LONGEST_SHOP_TEXT, SHOP_FORMAT, SHOP_VERSION } from './shop-limits.ts';
import { type ShopFile, shopFileSchema } from './shop-schema.ts';

/**
 * Reads a shop's own file. Takes its whole text; gives the shop, and the file as it was read, or one sentence that says
 * in which line what is wrong and what to do. Nothing is repaired in silence, nothing is fetched.
 */
export function readShop(text: string): { readonly shop: ShopBook; readonly file: ShopFile } | Refused {
  if (text.length > LONGEST_SHOP_TEXT) return SHOP_EN.refused('shopFile.large');
  const raw = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (raw.trim() === '') return SHOP_EN.refused('shopFile.empty');
  const read = valueOfJson(raw);
  if ('problem' in read) return read;
  const { value } = read;
  const { format, version } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  if (format !== SHOP_FORMAT) return SHOP_EN.refused('shopFile.notShop', { format: SHOP_FORMAT });
  if (typeof version === 'number' && version > SHOP_VERSION) {
    return SHOP_EN.refused('shopFile.newer', { version, newest: SHOP_VERSION });
  }
  const parsed = shopFileSchema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return issue ? faultSentence(issue, value, raw) : SHOP_EN.refused('shopFile.incomplete');
  }
  const file = parsed.data;
  const inStock = file.stock && contradictionIn(file.stock);
  if (inStock) return atLine(raw, { ...inStock, path: ['stock', ...inStock.path] });
  const fault = checkShop(file);
  return fault ? atLine(raw, fault) : { shop: bookOfShop(file), file };
}

/** By the part's name: what form it should have. */
const FORMS = {
  colour: 'shopForm.colour',
  currency: 'shopForm.currency',
  d: 'shopForm.d',
  data: 'shopForm.data',
  email: 'shopForm.email',
  phone: 'shopForm.phone',
  web: 'shopForm.web',
} as const;

function faultSentence(issue: core.$ZodIssue, value: unknown, text: string): Refused {
  const { path, where, complaint: usual } = schemaFault(issue, value);
  const part = path.at(-1);
  // Where a form is asked for, the form is worth more than what was found.
  const form = issue.code === 'invalid_format' && typeof part === 'string' && Object.hasOwn(FORMS, part);
  const complaint = form ? SHOP_EN.say(FORMS[part as keyof typeof FORMS]) : usual;
  const refused =
    where === ''
      ? SHOP_EN.refused('shopFile.wrong', { complaint })
      : SHOP_EN.refused('shopFile.wrongAt', { where, complaint });
  return atLine(text, { path, refused });
}
