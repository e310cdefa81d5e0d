import type { OwnFaceRecord } from '../../../../fonts/own-face.ts';
import { refusalWords } from '../../../words/say/finding-words.ts';
import { t } from '../../../words/t.ts';

/** What the design document takes, less a margin for base64. */
const LARGEST_FONT_BYTES = 5_900_000;

/** Reads a font file that a person chose; what is wrong with it comes back as a sentence. */
export async function readOwnFace(
  file: File,
): Promise<{ readonly ownFace: OwnFaceRecord } | { readonly problem: string }> {
  if (file.size > LARGEST_FONT_BYTES) return { problem: t('trouble.fontTooLarge') };
  try {
    const { ownFaceFrom } = await import('../../../../fonts/own-face.ts');
    const read = ownFaceFrom(new Uint8Array(await file.arrayBuffer()), file.name);
    return 'ownFace' in read ? read : { problem: refusalWords(read) };
  } catch {
    return { problem: t('trouble.unreadable') };
  }
}
