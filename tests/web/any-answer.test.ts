import { describe, expect, it } from 'vitest';
import { runAnswers } from '../figures/begin/answered.ts';
import { initialsCases, nameCases } from '../figures/begin/cases.ts';

// Shares of what `npm run figures -- begin/initials begin/names` goes through in full.
const SHARE = 331;
const SHORT = 24;

/** Beginnings whose small lettering gets strokes too fine for the sheet at half size, with the letters and names. */
const KNOWN_GAPS = [['wreath-and-name', 'Salvador Camacho']] as const;

function isKnownGap(one: { readonly beginning: string; readonly answers: unknown }): boolean {
  return KNOWN_GAPS.some(
    ([beginning, name]) => one.beginning === beginning && JSON.stringify(one.answers).includes(name),
  );
}

describe('any answer to a beginning can be cut at both sizes', () => {
  it.each(initialsCases().filter((_, i) => i % SHARE === 7))('$beginning $letters $answers', async (one) => {
    const { stops, unlike } = await runAnswers(one);
    expect(stops).toEqual([]);
    expect(unlike).toBeLessThanOrEqual(0.01);
  });

  const short = nameCases(400, 77)
    .filter(({ longest }) => longest <= SHORT)
    .slice(0, 10)
    .map(({ one }) => one);
  it.each(short.filter((one) => !isKnownGap(one)))('$beginning $letters $answers', async (one) => {
    expect((await runAnswers(one)).stops).toEqual([]);
  });

  // Still refused, and wrongly: such a case fails here as soon as it can be cut, and is then taken off the list.
  it.fails.each(short.filter(isKnownGap))('$beginning $letters $answers', async (one) => {
    expect((await runAnswers(one)).stops).toEqual([]);
  });
});
