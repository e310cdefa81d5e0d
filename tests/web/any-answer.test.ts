import { describe, expect, it } from 'vitest';
import { runAnswers, type AnswerCase } from '../figures/begin/answered.ts';
import { initialsCases, nameCases } from '../figures/begin/cases.ts';

// Shares of what `npm run figures -- begin/initials begin/names` goes through in full.
const SHARE = 331;
const SHORT = 24;

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
  it.each(short)('$beginning $letters $answers', async (one) => {
    expect((await runAnswers(one)).stops).toEqual([]);
  });

  // Each held only at a size a little below what its room allows, or in a wider ring.
  const found: readonly AnswerCase[] = [
    { beginning: 'wreath-and-name', letters: 'farm', answers: { name: 'Gerazym Zalewski', above: 'Estera Motyka' } },
    { beginning: 'wreath-and-name', letters: 'printed', answers: { name: 'Carles Alaníz Badillo' } },
    { beginning: 'makers-head', answers: { caskWord: 'Brygida Sobczak' } },
    { beginning: 'cask-series', answers: { maker: 'Oktay & Yeliz Akgün-Atlı' } },
  ];
  it.each(found)('$beginning $letters $answers', async (one) => {
    expect((await runAnswers(one)).stops).toEqual([]);
  });
});
