import type { FaceEntry } from '../../../fonts/catalogue.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Design } from '../../../geometry/design/schema.ts';

/** Every face that a text with something in it is set in. */
export function facesInUse({ elements }: Design): ReadonlySet<string> {
  return new Set(elements.flatMap((e) => (isText(e) && e.text.trim() !== '' ? [e.face] : [])));
}

/**
 * Faces that texts can be set in instead: not the only one in use. Where all is in capitals, script and blackletter
 * are left out: their capitals were never meant to stand together (common practice among letterers, no source).
 */
export function facesThatSuit(
  faces: readonly FaceEntry[],
  texts: string,
  used: ReadonlySet<string>,
): readonly FaceEntry[] {
  const capitals = /\p{Lu}{2}/u.test(texts) && !/\p{Ll}/u.test(texts);
  return faces.filter(
    ({ id, kind }) =>
      !(used.size === 1 && used.has(id)) && !(capitals && (kind === 'script' || kind === 'blackletter')),
  );
}
