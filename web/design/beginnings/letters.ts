import type { Letters, LettersQuestion } from './question.ts';

/** Faces that go well together: for what is large, and for what is small. */
const FLAVOURS = {
  classic: ['playfair-display-700', 'libre-caslon-text-700'],
  roman: ['cinzel-700', 'libre-caslon-text-700'],
  sturdy: ['alfa-slab-one-400', 'oswald-700'],
  farm: ['zilla-slab-700', 'zilla-slab-700'],
  friendly: ['bree-serif-400', 'bree-serif-400'],
  // the cuts of a stencil face get too thin for small lettering
  crate: ['stardos-stencil-700', 'oswald-700'],
  poster: ['abril-fatface-400', 'oswald-700'],
  deco: ['limelight-400', 'bree-serif-400'],
  printed: ['libre-caslon-text-700', 'oswald-700'],
} as const;

export type Flavour = keyof typeof FLAVOURS;

/** The question how it is lettered: which texts are large, which small, and which flavours suit this beginning. */
export function askLetters(
  large: readonly string[],
  small: readonly string[],
  flavours: readonly Flavour[],
): LettersQuestion {
  const offers = flavours.map((id): Letters => {
    const [big, little] = FLAVOURS[id];
    return {
      id,
      faces: Object.fromEntries([
        ...large.map((e): [string, string] => [e, big]),
        ...small.map((e): [string, string] => [e, little]),
      ]),
    };
  });
  return { kind: 'letters', id: 'letters', offers };
}
