import { afterEach, describe, expect, it } from 'vitest';
import { ownFaceFrom } from '../../fonts/own-face.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import { readPathData } from '../../geometry/measure/path-data.ts';
import { inMm, labelled, listed, named, said, say, shapeWords } from '../../geometry/sentences/say.ts';
import type { Refused } from '../../geometry/sentences/wording.ts';
import { findingWords, mendWords, refusalWords, wordingText } from '../../web/words/say/finding-words.ts';
import { formatNumber, lengthWords } from '../../web/words/say/format-number.ts';
import { parseNumber } from '../../web/words/say/parse-number.ts';
import { plateInShort } from '../../web/words/plate-in-short.ts';
import { recordWord, speak, spoken, t } from '../../web/words/t.ts';

afterEach(() => speak('en'));

describe('speaking', () => {
  it('takes its words from the language spoken, and English again afterwards', async () => {
    await speak('de');
    expect(spoken()).toBe('de');
    expect(t('page.top.undo')).toBe('Rückgängig');
    expect(plateInShort(1, 2)).toBe('1 Öffnung, 2 Stege');
    await speak('en');
    expect(t('page.top.undo')).toBe('Undo');
  });
  it('leaves what a person typed alone, whatever signs are in it', async () => {
    for (const language of ['en', 'fr'] as const) {
      await speak(language);
      for (const title of ['{{title}}', '$t(page.name)', '<b>&amp;', '$&', '{{count}}']) {
        expect(t('begin.opened', { title })).toContain(title);
      }
    }
  });
  // plural rules of Unicode CLDR 44: French counts 0 as one, English, German and Spanish as many
  it.each([
    ['en', 0, '0 bridges by hand'],
    ['en', 1, '1 bridge by hand'],
    ['en', 2, '2 bridges by hand'],
    ['de', 0, '0 Stege von Hand'],
    ['de', 1, '1 Steg von Hand'],
    ['fr', 0, '0 pont à la main'],
  ] as const)('in %s counts %d as “%s”', async (language, count, said) => {
    await speak(language);
    expect(t('bridges.count', { count })).toBe(said);
  });
  it('finds no word where none is: neither beyond a part or a word, nor in what objects have by birth', async () => {
    for (const language of ['en', 'de'] as const) {
      await speak(language);
      for (const path of ['page.nothing', 'page.name.length', 'page.__proto__', 'constructor', '', '.']) {
        expect(recordWord(path, 'as it stands')).toBe('as it stands');
      }
    }
  });
  it('fills its gaps once, whatever stands in what fills them', () => {
    expect(t('begin.opened', { title: '{{title}} {{count}} $& $1 $t(page.name)' })).toContain(
      '{{title}} {{count}} $& $1 $t(page.name)',
    );
  });
  it('says a record it does not know in the record’s English, and nothing for a path that is none of ours', async () => {
    await speak('es');
    expect(recordWord('materials.unobtainium.name', 'Unobtainium')).toBe('Unobtainium');
    expect(recordWord('motifs.<script>.label', 'motif')).toBe('motif');
    expect(recordWord('materials.mild-steel.name', 'Mild steel')).toBe('Acero dulce');
  });
});

describe('numbers', () => {
  // decimal signs: Unicode CLDR, from memory
  it.each([
    ['en', '1250.5', '0.85 mm'],
    ['de', '1250,5', '0,85 mm'],
    ['fr', '1250,5', '0,85 mm'],
    ['es', '1250,5', '0,85 mm'],
  ] as const)('are written and read back in %s', async (language, written, length) => {
    await speak(language);
    expect(formatNumber(1250.5, 3)).toBe(written);
    expect(formatNumber(-0.0001, 1)).toBe('0');
    expect(lengthWords(0.85, 'mm', 2)).toBe(length);
    expect(parseNumber(written)).toEqual({ value: 1250.5 });
    expect(parseNumber(formatNumber(-3.25, 2))).toEqual({ value: -3.25 });
  });
  it('asks about the sign that may stand between thousands, and about no other', () => {
    expect(parseNumber('1,250', 'en')).toEqual({ problem: 'which-comma' });
    expect(parseNumber('1,250', 'de')).toEqual({ value: 1.25 });
    expect(parseNumber('1.250', 'de')).toEqual({ problem: 'which-point' });
    expect(parseNumber('1.250', 'fr')).toEqual({ value: 1.25 });
    expect(parseNumber('1 250,5', 'fr')).toEqual({ value: 1250.5 });
    expect(parseNumber('1.250,5', 'es')).toEqual({ value: 1250.5 });
  });
});

describe('what the kernel says', () => {
  const thin = said('findings.bridgeThin', { width: inMm(0.851, 2), least: inMm(1) });

  it('is English as a sentence, and in any language by its words', async () => {
    expect(thin.sentence).toMatch(/^A bridge is only 0.85 mm wide; this stock needs 1 mm\./);
    expect(findingWords(thin, 'mm')).toBe(thin.sentence);
    await speak('de');
    expect(findingWords(thin, 'mm')).toMatch(/^Ein Steg ist nur 0,85 mm breit; dieses Blech braucht 1 mm\./);
    expect(findingWords(thin, 'inch')).toMatch(/^Ein Steg ist nur 0,034 in breit/);
  });
  it('translates names within it, and begins with a capital', async () => {
    const over = said('findings.rimOver', { what: say('names.ropeBorder'), over: inMm(3) });
    expect(over.sentence).toMatch(/^The border \(rope\) runs over/);
    await speak('fr');
    expect(findingWords(over, 'mm')).toMatch(/^La bordure \(corde\) dépasse de 3 mm/);
  });
  it('knows shapes by their labels', async () => {
    expect(shapeWords('letter O').english).toBe('letter O');
    expect(shapeWords('ear of grain').english).toBe('ear of grain');
    await speak('de');
    expect(wordingText(shapeWords('figure 8'), 'mm')).toBe('Ziffer 8');
    expect(wordingText(shapeWords('ear of grain'), 'mm')).toBe('Kornähre');
    expect(wordingText(shapeWords('something new'), 'mm')).toBe('something new');
  });
  it('lists three names and says that there are others', async () => {
    const letters = ['A', 'B', 'D', 'O'].map((sign) => shapeWords(`letter ${sign}`));
    const { sentence, ...rest } = said('findings.heldOnce', { what: listed(letters) });
    expect(sentence).toContain('letter A, letter B, letter D and others hangs');
    await speak('es');
    expect(findingWords({ sentence, ...rest }, 'mm')).toMatch(/^La letra A, la letra B, la letra D y otros:/);
  });
  it('labels mends alike', async () => {
    const mend = labelled('mends.cutBy', { process: named('processes.water-jet.name', 'Abrasive water jet') });
    expect(mend.label).toBe('Cut it by Abrasive water jet');
    await speak('de');
    expect(mendWords({ ...mend, change: { kind: 'set-stock', process: 'water-jet' } }, 'mm')).toBe(
      'Verfahren wechseln: Abrasiver Wasserstrahl',
    );
  });
  it('says why a design cannot be read, and where in it', async () => {
    const stock = { material: 'mild-steel', thicknessMm: 900, process: 'fibre-laser', use: 'paint' };
    const read = readDesign(JSON.stringify({ ...emptyDesign(), stock }));
    if (!('problem' in read)) throw new Error('it was read');
    expect(read.problem).toMatch(/^In this design, the thickness of the stock is 900, above the most allowed, 60\./);
    expect(refusalWords(read)).toBe(read.problem);
    await speak('de');
    expect(refusalWords(read)).toMatch(/^Eine Angabe in diesem Entwurf \(Blech, Dicke\) ist 900, mehr als/);
    await speak('fr');
    expect(refusalWords(read)).toMatch(/^Un point de ce projet \(tôle, épaisseur\) vaut 900, au-dessus/);
    await speak('es');
    expect(refusalWords(readDesign('{"format') as Refused)).toMatch(/^Este archivo se corta a la mitad/);
  });
  it('says why a font cannot be read, with its size in the language’s own figures', async () => {
    const read = ownFaceFrom(new Uint8Array(6_250_001).fill(1), 'a.ttf');
    if (!('problem' in read)) throw new Error('it was read');
    await speak('de');
    expect(refusalWords(read)).toMatch(/^Die Schriftdatei hat 6,3 MB; höchstens 6 MB/);
  });
  it('says what is wrong with a drawing’s path within the finding', async () => {
    const read = readPathData('L1 1');
    if (!('problem' in read)) throw new Error('it was read');
    const finding = said('findings.artworkUnreadable', { name: 'owl.svg', problem: read.problem });
    expect(finding.sentence).toContain('“owl.svg” can’t be read: one of its lines begins nowhere. Remove');
    await speak('de');
    expect(findingWords(finding, 'mm')).toContain('Eine ihrer Linien beginnt nirgends. Entfernen');
  });
  it('falls back on the sentence where there are no words', () => {
    expect(findingWords({ sentence: 'Plain.' }, 'mm')).toBe('Plain.');
  });
});
