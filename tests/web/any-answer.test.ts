import { describe, expect, it } from 'vitest';
import { runAnswers } from '../figures/begin/answered.ts';
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

  const short = nameCases(400, 77).filter(({ longest }) => longest <= SHORT);
  it.each(short.slice(0, 10).map(({ one }) => one))('$beginning $letters $answers', async (one) => {
    expect((await runAnswers(one)).stops).toEqual([]);
  });
});
