import { describe, expect, it } from 'vitest';
import { gatherAlike } from '../../geometry/bridges/gather-alike.ts';
import type { Finding } from '../../geometry/findings.ts';
import { listed, said, shapeWords } from '../../geometry/sentences/say.ts';

function speckIn(element: string, letters: readonly string[], x: number): Finding {
  return {
    code: 'speck-lost',
    severity: 'look',
    place: { kind: 'point', at: { x, y: 0 }, radiusMm: 3 },
    elementIds: [element],
    ...said('findings.speckLost', { what: listed(letters.map((l) => shapeWords(`letter ${l}`))) }),
  };
}

const loose: Finding = { ...speckIn('top', ['P'], 9), code: 'metal-in-pieces', severity: 'stop' };

describe('what is true of many letters of one text', () => {
  it('is said once, each letter named once and where the first stands', () => {
    const said = gatherAlike([speckIn('top', ['P'], 1), speckIn('top', ['R'], 2), speckIn('top', ['P'], 3)]);
    expect(said).toHaveLength(1);
    expect(said[0]?.sentence).toMatch(/inside letter P, letter R is too small/);
    expect(said[0]?.place).toMatchObject({ at: { x: 1 } });
  });

  it('names three letters and the others as others, names that were shortened before as well', () => {
    const four = speckIn('top', ['A', 'B', 'D', 'O'], 1);
    expect(gatherAlike([four, speckIn('top', ['A'], 2)])[0]?.sentence).toContain(
      'letter A, letter B, letter D and others',
    );
    const many = gatherAlike(['A', 'B', 'D', 'O', 'P'].map((l, i) => speckIn('top', [l], i)));
    expect(many[0]?.sentence).toMatch(/letter A, letter B, letter D and others/);
  });

  it('is told apart by element, and what stops the cut keeps every place', () => {
    const findings = [speckIn('top', ['P'], 1), loose, speckIn('line', ['P'], 2), loose];
    expect(gatherAlike(findings)).toEqual(findings);
  });
});
