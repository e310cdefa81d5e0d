import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { answerBeginning } from '../../web/design/beginnings/answer-all.ts';
import { READY_MADE, type Beginning } from '../../web/design/beginnings/beginnings.ts';
import { begun, firstDesign, isFirstDesign } from '../../web/design/beginnings/first-design.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { speak } from '../../web/words/t.ts';

const beginning = (id: string): Beginning => READY_MADE.find((b) => b.id === id)!;
const question = (b: Beginning, id: string) => b.questions.find((q) => q.id === id)!;
const answer = (d: Design, b: Beginning, id: string, text: string, capitals?: boolean) =>
  answerBeginning(d, b, question(b, id), text, capitals).design;
const lineOf = (d: Design, id: string) => d.elements.find((e) => e.id === id) as { text: string; y: number };

describe('an answer', () => {
  it('names the design, until a person names it otherwise', () => {
    const b = beginning('golden-wedding');
    const start = begun(b);
    expect(start.title).toBe('Golden wedding');
    const ruby = answer(answer(start, b, 'occasion', 'Ruby wedding', false), b, 'names', 'Ann & Tom', false);
    expect(ruby.title).toBe('Ruby wedding Ann & Tom');
    expect(answer(ruby, b, 'date', '1 MAY 2030').title).toBe(ruby.title);
    const named = { ...ruby, title: 'For the cellar' };
    expect(answer(named, b, 'names', 'Io & Lu').title).toBe('For the cellar');
    const emptied = answer(answer(ruby, b, 'occasion', ''), b, 'names', '');
    expect(emptied.title).toBe('Golden wedding');
  });

  it('is in capitals or as typed, line by line', () => {
    const b = beginning('makers-head');
    const mixed = answer(begun(b), b, 'what', 'Aged by Søren', false);
    expect(lineOf(mixed, 'what').text).toBe('Aged by Søren');
    expect(lineOf(answer(mixed, b, 'what', 'Aged by Søren', true), 'what').text).toBe('AGED BY SØREN');
  });

  it.each(READY_MADE)('$id: what is emptied leaves no gap, and comes back where it stood', (b) => {
    const start = begun(b);
    for (const q of b.questions) {
      if (q.kind === 'letters' || q.kind === 'motif') continue;
      const emptied = answerBeginning(start, b, q, '').design;
      const back = answerBeginning(emptied, b, q, 'X').design;
      for (const e of start.elements) {
        const again = back.elements.find((x) => x.id === e.id);
        if ('y' in e && again && 'y' in again) expect(again.y).toBeCloseTo(e.y, 5);
      }
    }
  });

  it('closes the gap of one line among three', () => {
    const b = beginning('makers-head');
    const start = begun(b);
    const emptied = answer(answer(start, b, 'filledWord', ''), b, 'filled', '');
    const [cask, number] = [lineOf(emptied, 'cask'), lineOf(emptied, 'number')];
    // what is left stands about the middle that all four had
    expect(cask.y).toBeLessThan(lineOf(start, 'cask').y - 0.1);
    expect(cask.y - number.y).toBeCloseTo(lineOf(start, 'cask').y - lineOf(start, 'number').y, 5);
  });
});

describe('a beginning', () => {
  it('belongs to the design, and nothing of it is cut', () => {
    for (const b of READY_MADE) {
      expect(begun(b).beginning).toBe(b.id);
      expect(fingerprintOf(begun(b))).toBe(fingerprintOf(b.design));
    }
  });

  it('was not chosen at the first visit', () => {
    const first = firstDesign();
    expect([isFirstDesign(first), first.beginning]).toEqual([true, undefined]);
    expect(isFirstDesign({ ...first })).toBe(false);
  });
});

describe.each(['de', 'fr', 'es'] as const)('samples in %s', (language) => {
  beforeAll(async () => {
    await speak(language);
    return () => speak('en');
  });

  it.each(READY_MADE)('$id can be cut at both sizes and speaks no English', async (b) => {
    const design = begun(b);
    const { faces } = await loadFaces(design);
    for (const plate of ['large', 'half']) {
      const { findings } = makePlate(design, plate, faces, createStore(), BUILT_IN);
      expect(findings.filter((f) => f.severity === 'stop').map((f) => f.sentence)).toEqual([]);
    }
    const said = JSON.stringify(design.elements);
    expect(said).not.toMatch(/CASK|FILLED|WEDDING|JUNE|SINCE|YEARS|HOUSE|OLD OAK|"OF /);
  });
});
