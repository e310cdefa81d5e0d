import { describe, expect, it } from 'vitest';
import { bringUpToDate } from '../../geometry/design/versions/bring-up-to-date.ts';
import { emptyDesign, newBorder, newLineText, newRingText } from '../../geometry/design/defaults.ts';
import { LONGEST_DESIGN_TEXT, readDesign } from '../../geometry/design/read-design.ts';
import { DESIGN_VERSION } from '../../geometry/design/limits.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { VERSION_STEPS } from '../../geometry/design/versions/steps.ts';
import { designText } from '../../geometry/design/write-design.ts';

const full: Design = {
  ...emptyDesign(),
  elements: [newRingText('top', 'stardos-stencil-700'), newLineText('middle', 'cinzel-700'), newBorder('edge')],
};

/** The design as a plain object to spoil. */
type Loose = Record<string, never> & { [key: string]: Loose };
function spoilt(change: (raw: Loose) => void): string {
  const raw = JSON.parse(JSON.stringify(full)) as Loose;
  change(raw);
  return problemOf(JSON.stringify(raw));
}

function problemOf(text: string): string {
  const read = readDesign(text);
  return 'problem' in read ? read.problem : 'no problem';
}

describe('a design that was saved', () => {
  it('comes back as it was', () => {
    expect(readDesign(designText(full))).toEqual({ design: full });
  });

  it('has one text, whatever order its parts were made in', () => {
    const backwards = Object.fromEntries(Object.entries(full).reverse()) as unknown as Design;
    expect(Object.keys(backwards)[0]).not.toBe('format');
    expect(designText(backwards)).toBe(designText(full));
    expect(designText(full).startsWith('{\n  "format": "bridgehead-design",\n  "version": 4,')).toBe(true);
  });

  it('may begin with a byte order mark', () => {
    expect(readDesign(`\uFEFF${designText(full)}`)).toEqual({ design: full });
  });
});

describe('a file that is no design', () => {
  it.each([
    ['', 'empty'],
    ['  \n', 'empty'],
    ['hello', 'cannot be read'],
    ['{"format": }', 'cannot be read'],
    ['null', 'not a Bridgehead design'],
    ['[1, 2]', 'not a Bridgehead design'],
    ['{"format":"something else","version":1}', 'not a Bridgehead design'],
    ['{"format":"bridgehead-design"}', 'which version'],
    ['{"format":"bridgehead-design","version":"1"}', 'which version'],
    ['{"format":"bridgehead-design","version":1.5}', 'which version'],
    ['{"format":"bridgehead-design","version":0}', 'never existed'],
    ['{"format":"bridgehead-design","version":-3}', 'never existed'],
  ])('%j is told so', (text, words) => {
    expect(problemOf(text)).toContain(words);
  });

  it('cut off anywhere is said to stop in the middle', () => {
    const text = designText(full).trimEnd();
    for (let at = 1; at < text.length; at += 7)
      expect(problemOf(text.slice(0, at)), `at ${at}`).toContain('stops in the middle');
  });

  it('too large is not even tried', () => {
    expect(problemOf(' '.repeat(LONGEST_DESIGN_TEXT + 1))).toContain('larger than 16 MB');
  });

  it('nested without end does not break the reader', () => {
    const deep = '['.repeat(200_000) + ']'.repeat(200_000);
    expect(problemOf(`{"format":"bridgehead-design","version":1,"x":${deep}}`)).not.toBe('no problem');
  });
});

describe('versions', () => {
  it('a newer one names both', () => {
    const problem = spoilt((raw) => Object.assign(raw, { version: 7 }));
    expect(problem).toContain('version 7');
    expect(problem).toContain(`version ${DESIGN_VERSION}`);
  });

  it('the steps of the product lead from 1 to the current version without a gap', () => {
    expect(VERSION_STEPS.map((s) => s.from)).toEqual(Array.from({ length: DESIGN_VERSION - 1 }, (_, i) => i + 1));
  });

  it('an approval of version 2 keeps its day, and is one that was typed in from paper', () => {
    const old = { name: 'Ada Pell', date: '2027-01-04', fingerprint: 'ffffffff' };
    const raw = { ...JSON.parse(designText(full)), version: 2, approval: old } as object;
    const read = readDesign(JSON.stringify(raw));
    if ('problem' in read) throw new Error(read.problem);
    const { date, ...rest } = old;
    expect(read.design.approval).toEqual({ ...rest, at: date, how: 'paper' });
  });

  it('an older one goes through every step in order, and the old document is left alone', () => {
    const old = { version: 1, seen: [] as string[] };
    const steps = [
      { from: 2, step: (d: Record<string, unknown>) => ({ ...d, seen: [...(d['seen'] as string[]), '2 to 3'] }) },
      { from: 1, step: (d: Record<string, unknown>) => ({ ...d, seen: [...(d['seen'] as string[]), '1 to 2'] }) },
    ];
    expect(bringUpToDate(old, 3, steps)).toEqual({ upToDate: { version: 3, seen: ['1 to 2', '2 to 3'] } });
    expect(old).toEqual({ version: 1, seen: [] });
    expect(bringUpToDate(old, 4, steps)).toMatchObject({ problem: expect.stringContaining('version 3') as string });
  });
});

describe('what is wrong is said with its place', () => {
  it.each<[string, (raw: Loose) => void, string[]]>([
    ['a missing part', (r) => delete r['stock']?.['thicknessMm'], ['the thickness of the stock', 'is missing']],
    [
      'a text for a number',
      (r) => Object.assign(r['stock'] ?? {}, { thicknessMm: '1.5' }),
      ['the thickness', 'a number'],
    ],
    ['a number too large', (r) => Object.assign(r['stock'] ?? {}, { thicknessMm: 900 }), ['900', '60']],
    [
      'a text too long',
      (r) => Object.assign(r['elements']?.[0] ?? {}, { text: 'x'.repeat(500) }),
      ['the text of element 1 ("top")', '500', '200'],
    ],
    [
      'a kind unknown',
      (r) => Object.assign(r['elements']?.[1] ?? {}, { kind: 'cloud' }),
      ['element 2 ("middle")', '"cloud"'],
    ],
    ['a choice unknown', (r) => Object.assign(r['stock'] ?? {}, { use: 'acid' }), ['"acid"', '"paint" or "torch"']],
    [
      'a part unknown',
      (r) => Object.assign(r['elements']?.[2] ?? {}, { colour: 'red' }),
      ['element 3 ("edge")', '"colour"'],
    ],
    ['a part unknown at the top', (r) => Object.assign(r, { macros: [] }), ['This design holds a part', '"macros"']],
    [
      'a diameter of no form',
      (r) => Object.assign(r['plates']?.[0] ?? {}, { diameter: 'huge' }),
      ['the diameter of plate 1'],
    ],
    [
      'a share out of range',
      (r) => Object.assign(r['plates']?.[1] ?? {}, { diameter: { share: 3 } }),
      ['plate 2 ("half")', '3'],
    ],
    ['no plate', (r) => Object.assign(r, { plates: [] }), ['the list of plates', 'at least 1']],
    ['an id twice', (r) => Object.assign(r['elements']?.[1] ?? {}, { id: 'top' }), ['Two elements', '"top"']],
    ['a plate id twice', (r) => Object.assign(r['plates']?.[1] ?? {}, { id: 'large' }), ['Two plates', '"large"']],
    ['a count of halves', (r) => Object.assign(r['plates']?.[0] ?? {}, { quantity: 1.5 }), ['the quantity of plate 1']],
  ])('%s', (_, change, words) => {
    const problem = spoilt(change);
    for (const word of words) expect(problem).toContain(word);
    expect(problem).toMatch(/^[A-Z].*\.$/);
  });
});

describe('tampering', () => {
  it.each(['{"format"', '"order":{"who"', '{"kind":"lineText"'])('a hidden prototype before %s is refused', (where) => {
    const clean = JSON.stringify(full);
    const at = clean.indexOf(where) + where.indexOf('{') + 1;
    const text = `${clean.slice(0, at)}"__proto__":{"polluted":true},${clean.slice(at)}`;
    expect(readDesign(clean)).toEqual({ design: full });
    expect(problemOf(text)).toContain('__proto__');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('a part named constructor is unknown like any other', () => {
    expect(spoilt((r) => Object.assign(r, { constructor: { prototype: {} } }))).toContain('"constructor"');
  });
});
