import { motifById } from '../../geometry/motifs/catalogue.ts';
import { isText } from '../../geometry/design/kinds.ts';
import { describe, expect, it } from 'vitest';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { verdictOf } from '../../geometry/findings.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { faceEntry } from '../../fonts/catalogue.ts';
import { addBorder } from '../../web/state/actions/elements/add-border.ts';
import { addLineText } from '../../web/state/actions/elements/add-line-text.ts';
import { addRingText } from '../../web/state/actions/elements/add-ring-text.ts';
import { FIRST_FACE } from '../../web/state/actions/elements/usual-face.ts';
import { BEGINNINGS } from '../../web/design/beginnings/beginnings.ts';
import { fromRim } from '../../web/state/from-rim.ts';
import { fileStem } from '../../web/worker/file-stem.ts';
import { refused } from '../../geometry/sentences/say.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { withFaceProblems } from '../../web/worker/with-face-problems.ts';
import { plateInShort } from '../../web/words/plate-in-short.ts';
import { verdictSentence } from '../../web/words/verdict-sentence.ts';

describe('the list from rim to centre', () => {
  it('runs by radius, the top before the bottom, lines last and from top to bottom', () => {
    let design: Design = emptyDesign();
    for (const add of [addLineText, addLineText, addRingText, addRingText, addBorder]) design = add(design).design;
    const kinds = fromRim(design).map((e) => (e.kind === 'ringText' ? e.reads : e.kind));
    expect(kinds).toEqual(['border', 'outward', 'inward', 'lineText', 'lineText']);
    const lines = fromRim(design).flatMap((e) => (e.kind === 'lineText' ? [e.y] : []));
    expect(lines).toEqual([...lines].sort((a, b) => b - a));
  });
});

describe('beginnings', () => {
  it('are there, can be read, and their faces are in the catalogue', () => {
    expect(BEGINNINGS.length).toBeGreaterThanOrEqual(3);
    for (const design of BEGINNINGS) {
      for (const e of design.elements) if (isText(e)) expect(faceEntry(e.face), e.face).toBeDefined();
    }
    expect(faceEntry(FIRST_FACE)).toBeDefined();
  });
});

describe('a face that could not be had', () => {
  it('stops the cut with its own sentence and lights up its texts', () => {
    const design = addRingText(emptyDesign()).design;
    const id = design.elements[0]?.id ?? '';
    const plate = makePlate(design, 'large', { get: () => undefined, motif: motifById }, createStore(), BUILT_IN);
    const why = refused('reading.faceFetch', { name: 'Oswald' });
    const told = withFaceProblems(plate, () => [id], [{ faceId: 'x', ...why }]);
    expect(told.findings[0]).toMatchObject({
      severity: 'stop',
      sentence: 'The face Oswald could not be fetched. Check the connection and try again.',
      words: why.words,
      elementIds: [id],
    });
    expect(told.verdict).toBe('stop');
    expect(verdictOf(told.findings)).toBe('stop');
    expect(withFaceProblems(plate, () => [], [])).toBe(plate);
  });
});

describe('words', () => {
  it('count in plain English', () => {
    expect(verdictSentence('ready', 0, 0)).toBe('Holds together, ready to cut');
    expect(verdictSentence('look', 0, 2)).toBe('Holds together, 2 things to look at');
    expect(verdictSentence('stop', 1, 4)).toBe('Cannot be cut yet: one thing to mend');
    expect(plateInShort(1, 2)).toBe('1 opening, 2 bridges');
  });
});

describe('file stems', () => {
  it.each([
    ['Marrow Lane Perry, cask 14', 'Marrow-Lane-Perry-cask-14'],
    ['Élodie & Jörg', 'Elodie-Jorg'],
    ['../../etc', 'etc'],
    ['🍐', 'stencil'],
    ['', 'stencil'],
  ])('%s gives %s', (title, stem) => {
    expect(fileStem(title)).toBe(stem);
  });
});
