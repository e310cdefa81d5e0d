import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** What a shop edits beside the built page, without a build. */
export const SHOPS_OWN: readonly string[] = ['stock.json', 'shop.json'];

/** True for a copy that precompress.ts laid beside a file: no file of its own. */
export function isCompressedCopy(file: string): boolean {
  return /\.(?:br|gz)$/.test(file);
}

/** All files of the built page by their path from the folder, sorted; no copies, no maps, nothing of leftOut. */
export function builtFiles(folder: string, leftOut: readonly string[] = []): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.map') && !isCompressedCopy(entry.name))
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .filter((file) => !leftOut.includes(file))
    .sort();
}
