import { placePoint } from '../measure/clock.ts';
import type { Placement } from '../shapes.ts';
import { labelOf } from './letters.ts';
import type { Letter } from './letters.ts';
import type { PlacedShape } from './placed.ts';
import { movePlacement } from './rail.ts';
import type { Rail } from './rail.ts';
import type { Spacing } from './spacing.ts';

export interface SetLetters {
  readonly placed: readonly PlacedShape[];
  /** Farthest ink from the plate's centre. */
  readonly reachMm: number;
}

/** Spaced letters as shapes on the plate: from the rail's plain position by one rigid move of the whole text. */
export function shapesOf(
  elementId: string,
  letters: readonly Letter[],
  spacing: Spacing,
  rail: Rail,
  move: Placement,
): SetLetters {
  const placed: PlacedShape[] = [];
  let reachMm = 0;
  letters.forEach((letter, i) => {
    if (!letter.glyph) return;
    const placement = movePlacement(rail.place(spacing.atMm[i] ?? 0, letter.advanceMm), move);
    for (const ring of letter.glyph.rings) {
      for (const p of ring) {
        const q = placePoint(p, placement);
        reachMm = Math.max(reachMm, Math.hypot(q.x, q.y));
      }
    }
    placed.push({
      id: `${elementId}/${placed.length}`,
      elementId,
      label: labelOf(letter.char),
      storeKey: letter.glyph.storeKey,
      outline: letter.glyph.outline,
      placement,
      word: letter.word,
    });
  });
  return { placed, reachMm };
}
