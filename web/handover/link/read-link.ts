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
  if (LINK_MARK.startsWith(fragment)) return { problem: t('link.broken') };
  if (!fragment.startsWith(LINK_MARK)) return { problem: t('link.notOurs') };
  let read: ReturnType<typeof readLink> = { problem: t('link.broken') };
  for (const payload of payloadsOf(fragment.slice(LINK_MARK.length))) {
    read = readPayload(payload);
    if ('design' in read) break;
  }
  return read;
}

/**
 * What a message put behind a link (a full stop, a bracket, a blank) is dropped: letters of base64url go as far as the
 * design does, and the CRC-32 tells whether they are whole. Two of these letters are also signs of writing.
 */
function payloadsOf(text: string): readonly string[] {
  const letters = /^[A-Za-z0-9_-]*/.exec(text)?.[0] ?? '';
  const plain = letters.replace(/[_-]+$/, '');
  return plain === letters ? [letters] : [letters, plain];
}

function readPayload(payload: string): ReturnType<typeof readLink> {
  const whole = fromBase64Url(payload);
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
