import { describe, expect, it } from 'vitest';
import { nextOfferNumber, type OfferNumberParts } from '../../web/state/own/offer-numbers.ts';
import { createDesk } from './desks.ts';

const DAY = '2027-01-04';

describe('numbers of offers', () => {
  it('go up by one at a desk, in any tab of its browser', async () => {
    const desk = createDesk(1);
    const numbers = await Promise.all([1, 2, 3].map(() => nextOfferNumber(DAY, desk)));
    expect(numbers.map((n) => n.split('-').at(-1))).toEqual(['1', '2', '3']);
    expect(new Set(numbers.map((n) => n.slice(0, 10)))).toHaveLength(1);
    expect(numbers[0]).toMatch(/^2027-[2-9A-HJ-NP-Z]{5}-1$/);
  });
  it('are given all the same where nothing can be kept, and once each', async () => {
    const shut: OfferNumberParts['storage'][] = [
      () => undefined,
      () => {
        throw new Error('shut');
      },
    ];
    const numbers = await Promise.all(
      shut.flatMap((storage) =>
        [1, 2].map(() => nextOfferNumber(DAY, { ...createDesk(storage === shut[0] ? 7 : 8), storage })),
      ),
    );
    expect(numbers.every((n) => /^2027-.{5}-1$/.test(n))).toBe(true);
  });
  it('begin again under a mark of their own where what was kept is not ours', async () => {
    const desk = createDesk(2);
    desk.storage()?.setItem('bridgehead-offers', '{"mark":"x","count":"many"}');
    expect(await nextOfferNumber(DAY, desk)).toMatch(/^2027-[2-9A-HJ-NP-Z]{5}-1$/);
  });
});
