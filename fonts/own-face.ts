import { readFace } from '../geometry/adapters/opentype.ts';
import { ownFaceId } from '../geometry/design/own-face-id.ts';
import { beginningOf } from '../geometry/sentences/shorten.ts';
import type { Refused } from '../geometry/sentences/wording.ts';

/** A person's own font file as the design keeps it; the same record as OwnFace of the design's schema. */
export interface OwnFaceRecord {
  readonly id: string;
  readonly name: string;
  readonly data: string;
}

/** Takes a font file's bytes and file name; never throws. The same bytes always get the same id. */
export function ownFaceFrom(bytes: Uint8Array, fileName: string): { ownFace: OwnFaceRecord } | Refused {
  const id = ownFaceId(bytes);
  const outcome = readFace(id, bytes);
  if ('problem' in outcome) return outcome;
  const plainName = fileName
    .replace(/^.*[\\/]/, '')
    .replace(/\.[a-z0-9]+$/i, '')
    .trim();
  const name = beginningOf(outcome.face.name === id ? plainName : outcome.face.name, 120) || 'Own face';
  return { ownFace: { id, name, data: base64Of(bytes) } };
}

function base64Of(bytes: Uint8Array): string {
  let text = '';
  // In pieces: a call takes only so many arguments.
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}
