import type { Face } from '../geometry/adapters/face.ts';

/** Latin letters beyond Latin-1 (Unicode blocks 0100 to 02FF and 1E00 to 1EFF), which stand in a file of their own. */
const FURTHER = /[\u0100-\u02ff\u1e00-\u1eff]/gu;

/** Texts hold a letter that the face lacks and that its file of further letters may have. */
export function wantsFurther(face: Face, texts: readonly string[]): boolean {
  return texts.some(
    (text) =>
      text
        .normalize('NFC')
        .match(FURTHER)
        ?.some((char) => !face.glyph(char)) === true,
  );
}

/**
 * A face with the letters of its second file. No file kerns a pair across both, so a further letter is kerned as the
 * plain letter that it is drawn from: common practice, no source.
 */
export function withFurther(face: Face, further: Face): Face {
  const plainIn = (char: string): string => (face.glyph(char) ? char : plain(char));
  return {
    ...face,
    glyph: (char) => face.glyph(char) ?? further.glyph(char),
    kern: (left, right) => face.kern(plainIn(left), plainIn(right)),
  };
}

/** Without its accents: `ő` gives o. */
function plain(char: string): string {
  return STROKED[char] ?? Array.from(char.normalize('NFD'))[0] ?? char;
}

/** Letters whose stroke Unicode does not take for an accent. */
const STROKED: Readonly<Record<string, string>> = { Ł: 'L', ł: 'l', Đ: 'D', đ: 'd', Ħ: 'H', ħ: 'h', Ŧ: 'T', ŧ: 't' };
