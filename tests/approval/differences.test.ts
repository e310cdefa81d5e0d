import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differencesOf } from '../../geometry/approval/differences.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { isText } from '../../geometry/design/kinds.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { demo, DEMOS } from './demos.ts';
import { someEdits } from './random-edits.ts';

const OAK = withText(demo('golden-wedding'), 'OAK');

function withText(design: Design, text: string): Design {
  return { ...design, elements: design.elements.map((e) => (e.id === 'golden' && isText(e) ? { ...e, text } : e)) };
}

function edited(id: string, part: object, design = OAK): Design {
  return { ...design, elements: design.elements.map((e) => (e.id === id ? { ...e, ...part } : e)) };
}

function sentences(after: Design, before = OAK): string[] {
  return differencesOf(before, after, { book: BUILT_IN }).map((d) => d.sentence);
}

describe('what changed', () => {
  it('is said by the letter', () => {
    expect(sentences(withText(OAK, 'OAT'))).toEqual(['The text “OAK” is now “OAT”.']);
    expect(sentences(withText(OAK, ''))).toEqual(['The text “OAK” is empty now.']);
  });
  it.each([
    [{ face: 'tinos-400' }, '“OAK” is set in tinos-400 (before: libre-caslon-text-700).'],
    [{ inner: 0.69, outer: 0.833 }, '“OAK” is 10 % larger.'],
    [{ middleDeg: 12 }, '“OAK” stands at 12° round the plate (it stood at 0°).'],
    [{ reads: 'inward' }, 'The heads of the letters of “OAK” point to the centre now.'],
    [{ tracking: 0.1 }, 'The letters of “OAK” stand closer: by 2 % of their height.'],
    [{ fit: { by: 'size', spanDeg: 120 } }, '“OAK” is to fill 120° of its ring now.'],
    [{ manner: 'band' }, '“OAK” is bridged otherwise: by one broad band (before: as the whole design).'],
  ])('is said of a text: %j', (part, sentence) => {
    expect(sentences(edited('golden', part))[0]).toBe(sentence);
  });
  it('names a motif that gave way to another, and what was added and taken out', () => {
    expect(sentences(edited('left', { motif: 'star' }))).toEqual([
      'The motif (star) stands where the motif (heart) was.',
    ]);
    const without = { ...OAK, elements: OAK.elements.filter((e) => e.id !== 'rim') };
    expect(sentences(without)).toEqual(['The border (beads) was taken out.']);
    expect(sentences(OAK, without)).toEqual(['The border (beads) was added.']);
  });
  it('is said of plates, stock, bridges and barrel, in the words of the shop', () => {
    const after: Design = {
      ...OAK,
      plates: OAK.plates.map((p, i) => (i === 0 ? { ...p, diameter: { mm: 480 } } : p)),
      stock: { ...OAK.stock, material: 'mild-steel', thicknessMm: OAK.stock.thicknessMm + 0.5, use: 'torch' },
      bridges: { ...OAK.bridges, width: { mm: 2 } },
    };
    const found = differencesOf(OAK, after, { book: BUILT_IN });
    expect(found.map((d) => d.group)).toEqual(['bridges', 'plates', 'stock', 'stock', 'stock']);
    expect(found.map((d) => d.sentence).join(' ')).toMatch(
      /Bridges are to be 2 mm wide \(before: as the stock asks\)\. The plate “[^”]+” has another size: 480 mm .* The material is Mild steel \(before: /,
    );
  });
  it('shows a change that is tiny by as many decimals as it takes', () => {
    expect(sentences(edited('left', { x: -0.755 + 0.000004 }))).toEqual([
      'The motif (heart) moved to the right by 0.0004 % of the plate’s radius.',
    ]);
  });
  it('does not tell what is on paper only, nor new ids of the same elements', () => {
    const title = { ...OAK, title: 'Other', plates: OAK.plates.map((p) => ({ ...p, quantity: 9 })) };
    expect(sentences(title)).toEqual([]);
    const renamed = { ...OAK, elements: OAK.elements.map((e) => ({ ...e, id: `${e.id}-2` })) };
    expect(sentences(renamed)).toEqual([]);
    expect(
      sentences({
        ...withText(OAK, 'OAT'),
        elements: withText(OAK, 'OAT').elements.map((e) => ({ ...e, id: `${e.id}-2` })),
      }),
    ).toEqual(['“OAK” was taken out.', '“OAT” was added.']);
  });
  it('tells of the shop’s own rules where the design is the same', () => {
    const fingerprints = { before: 'a'.repeat(64), after: 'b'.repeat(64) };
    expect(differencesOf(OAK, OAK, { book: BUILT_IN, fingerprints }).map((d) => d.code)).toEqual(['differences.rules']);
  });
});

describe('differences of random changes', () => {
  it.each(DEMOS)('are there for %s exactly when the fingerprints differ, and by name', (_, design) => {
    fc.assert(
      fc.property(someEdits, someEdits, (one, two) => {
        const [before, after] = [one(design), two(one(design))];
        const found = differencesOf(before, after, { book: BUILT_IN });
        const differ = fingerprintOf(before) !== fingerprintOf(after);
        expect(found.length > 0).toBe(differ);
        // The sentence of last resort is for none of these.
        expect(found.map((d) => d.code)).not.toContain('differences.other');
        for (const { sentence } of found) expect(sentence).toMatch(/^[^{}]+[.]$/);
      }),
      { seed: 11, numRuns: 150 },
    );
  });
});
