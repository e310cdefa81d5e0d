import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { words } from '../words/en.ts';

const LARGEST_FILE_BYTES = 20_000_000;

/** Reads a design file that a person chose; what is wrong with it comes back as a sentence. */
export async function openDesignFile(file: File): Promise<{ readonly design: Design } | { readonly problem: string }> {
  if (file.size > LARGEST_FILE_BYTES) return { problem: words.trouble.tooLarge };
  try {
    return readDesign(await file.text());
  } catch {
    return { problem: words.trouble.unreadable };
  }
}
