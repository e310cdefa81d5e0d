import type { Design } from '../../geometry/design/schema.ts';
import { sayRefusal } from '../words/say/say-refusal.ts';
import { t } from '../words/t.ts';

const LARGEST_FILE_BYTES = 20_000_000;

/** Reads a design file that a person chose; what is wrong with it comes back as a sentence. */
export async function openDesignFile(file: File): Promise<{ readonly design: Design } | { readonly problem: string }> {
  if (file.size > LARGEST_FILE_BYTES) return { problem: t('trouble.tooLarge') };
  try {
    const { readDesign } = await import('../../geometry/design/read-design.ts');
    const read = readDesign(await file.text());
    return 'design' in read ? read : { problem: await sayRefusal(read) };
  } catch {
    return { problem: t('trouble.unreadable') };
  }
}
