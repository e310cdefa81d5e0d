import { describe, expect, it } from 'vitest';
import { CHANGES } from './changes-table.ts';
import { PLACES } from './standing-places.ts';

const QUICK = Object.entries(PLACES).filter(([name]) => name !== 'proof' && name !== 'spec sheet');

describe('what is said after a change, at every place that says it', () => {
  it('is asked of sixty changes at least, each named once', () => {
    expect(CHANGES.length).toBeGreaterThanOrEqual(60);
    expect(new Set(CHANGES.map(({ name }) => name)).size).toBe(CHANGES.length);
  });
  it.each(QUICK)('%s', async (_, judge) => {
    const untrue: string[] = [];
    for (const change of CHANGES) {
      const wrong = await judge(change);
      if (wrong !== undefined) untrue.push(`${change.name}: ${wrong}`);
    }
    expect(untrue).toEqual([]);
  });
  it.each(['proof', 'spec sheet'])('%s, of every sixth', { timeout: 120_000 }, async (place) => {
    const untrue: string[] = [];
    for (const change of CHANGES.filter((__, i) => i % 6 === 1)) {
      const wrong = await PLACES[place]!(change);
      if (wrong !== undefined) untrue.push(`${change.name}: ${wrong}`);
    }
    expect(untrue).toEqual([]);
  });
});
