import type { FaceEntry } from '../../fonts/catalogue.ts';
import { isText } from '../../geometry/design/kinds.ts';
import type { Design } from '../../geometry/design/schema.ts';

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

/** One of each kind in turn, so that the first few show how different lettering can look. */
export function mixedKinds(faces: readonly FaceEntry[]): readonly FaceEntry[] {
  const before = new Map<string, number>();
  const turnOf = new Map<FaceEntry, number>();
  for (const face of faces) {
    const turn = before.get(face.kind) ?? 0;
    before.set(face.kind, turn + 1);
    turnOf.set(face, turn);
  }
  return [...faces].sort((a, b) => (turnOf.get(a) ?? 0) - (turnOf.get(b) ?? 0));
}
