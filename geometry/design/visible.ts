import { shorten } from '../sentences/shorten.ts';

/**
 * A text out of somebody's file, fit to be quoted in a sentence of ours: signs that do nothing visible or turn the
 * reading direction (Unicode Technical Report 36, section 3.5) are shown as a box, and no quote is longer than 60.
 */
export function visible(text: string): string {
  const shown = text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '\u25a1');
  return shorten(shown, 60, '...');
}
