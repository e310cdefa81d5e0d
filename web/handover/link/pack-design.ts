import { deflateSync, strToU8 } from 'fflate';
import { approvedRevision } from '../../../geometry/approval/approved-revision.ts';
import { canonicalJson } from '../../../geometry/design/canonical-json.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { toBase64Url } from './base64url.ts';
import { crc32 } from '../../../geometry/adapters/crc32.ts';
import { DICTIONARY_1 } from './dictionary-1.ts';
import { LINK_MARK, LONGEST_LINK, MOST_UNPACKED_BYTES } from './limits.ts';

/**
 * The fragment of a link that carries the design with its options and its approval: canonical JSON in UTF-8, its CRC-32
 * before it, deflated with a preset dictionary, in base64url. Of its revisions only the approved one goes along, so that
 * a change can be told and taken back. Where it does not fit it stays in the file, as the others do.
 * too-large: with drawings or fonts of its own it does not go into an address.
 */
export function packDesign(design: Design): { readonly fragment: string } | { readonly problem: 'too-large' } {
  const { revisions: _, ...bare } = design;
  const approved = approvedRevision(design);
  const whole = approved && packWhole({ ...bare, revisions: [approved] });
  return whole && 'fragment' in whole ? whole : packWhole(bare);
}

function packWhole(design: Design): { readonly fragment: string } | { readonly problem: 'too-large' } {
  const bytes = strToU8(canonicalJson(design));
  if (bytes.length > MOST_UNPACKED_BYTES) return { problem: 'too-large' };
  const deflated = deflateSync(bytes, { level: 9, dictionary: strToU8(DICTIONARY_1) });
  const whole = new Uint8Array(4 + deflated.length);
  new DataView(whole.buffer).setUint32(0, crc32(bytes));
  whole.set(deflated, 4);
  const fragment = `${LINK_MARK}${toBase64Url(whole)}`;
  return fragment.length > LONGEST_LINK ? { problem: 'too-large' } : { fragment };
}
