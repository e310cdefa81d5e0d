import { strToU8 } from 'fflate';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { refusalWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import { fromBase64Url } from './base64url.ts';
import { crc32 } from '../../../geometry/adapters/crc32.ts';
import { DICTIONARY_1 } from './dictionary-1.ts';
import { inflateCapped } from '../../../geometry/adapters/inflate-capped.ts';
import { LINK_MARK, LONGEST_LINK, MOST_UNPACKED_BYTES } from './limits.ts';

/** Reads the fragment of an address. It may come from anybody: what is wrong with it comes back as a sentence. */
export function readLink(fragment: string): { readonly design: Design } | { readonly problem: string } {
  if (fragment.length > LONGEST_LINK) return { problem: t('link.tooLarge') };
  if (!fragment.startsWith(LINK_MARK)) return { problem: t('link.notOurs') };
  const whole = fromBase64Url(fragment.slice(LINK_MARK.length));
  if (whole === undefined || whole.length < 5) return { problem: t('link.broken') };
  const unpacked = inflateCapped(whole.subarray(4), MOST_UNPACKED_BYTES, strToU8(DICTIONARY_1));
  if ('problem' in unpacked) return { problem: t(unpacked.problem === 'broken' ? 'link.broken' : 'link.bomb') };
  const { bytes } = unpacked;
  if (new DataView(whole.buffer, whole.byteOffset).getUint32(0) !== crc32(bytes)) return { problem: t('link.broken') };
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return { problem: t('link.broken') };
  }
  const read = readDesign(text);
  return 'design' in read ? read : { problem: t('link.badDesign', { why: refusalWords(read) }) };
}
