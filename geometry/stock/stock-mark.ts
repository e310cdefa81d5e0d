import type { StockFile } from './stock-schema.ts';

/**
 * A short mark of a stock file's numbers and texts: an edited file has another one, but by a chance of one in billions.
 * It tells the file that ships from a shop's own; it is no guard against anybody.
 */
export function stockMark(file: StockFile): string {
  const text = JSON.stringify(file);
  return `${text.length}-${fnv1a(text).toString(16)}`;
}

/** FNV-1a with 32 bits (draft-eastlake-fnv, 2), each UTF-16 unit taken as one octet is there. */
export function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
