import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { isText } from '../../geometry/design/kinds.ts';
import { designSchema, type Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { addArtwork } from '../../web/state/actions/elements/add-artwork.ts';
import { READY_MADE } from '../../web/design/beginnings/beginnings.ts';
import { giveAnswer, readAnswer, shownAs } from '../../web/design/beginnings/answer.ts';
import { initialsOf } from '../../web/design/beginnings/initials.ts';
import type { Question, TextQuestion } from '../../web/design/beginnings/question.ts';

const store = createStore();

async function lookAt(design: Design, plateId: string): Promise<string[]> {
  const { faces, problems } = await loadFaces(design);
  expect(problems).toEqual([]);
  const { findings } = makePlate(design, plateId, faces, store, BUILT_IN);
  return findings.filter((f) => f.severity !== 'note').map((f) => `${f.code}: ${f.sentence}`);
}

const isTyped = (q: Question): q is TextQuestion => q.kind === 'text' || q.kind === 'date';

describe('beginnings', () => {
  it('are the files of web/demo, at least seven, each with a question for every text', () => {
    const files = readdirSync(fileURLToPath(new URL('../../web/demo/', import.meta.url)));
    expect(READY_MADE.map(({ id }) => `${id}.json`).sort()).toEqual(files.filter((f) => f.endsWith('.json')).sort());
    expect(READY_MADE.length).toBeGreaterThanOrEqual(7);
    for (const { design, questions } of READY_MADE) {
      const asked = questions.filter(isTyped).flatMap((q) => [...q.into.map((i) => i.element), q.initials]);
      const texts = design.elements.filter(isText).map((e) => e.id);
      expect(texts.filter((text) => !asked.includes(text))).toEqual([]);
    }
  });

  it.each(READY_MADE)('$id: every question finds its answer on the plate, and giving it back changes nothing', (b) => {
    for (const question of b.questions) {
      const answer = readAnswer(b.design, question);
      expect(answer, question.id).toBeTruthy();
      expect(giveAnswer(b.design, question, answer ?? '').design, question.id).toEqual(b.design);
    }
  });

  it.each(READY_MADE)('$id: what is answered is read back, and nothing else changes', ({ design, questions }) => {
    for (const question of questions) {
      const answer = isTyped(question)
        ? 'Wren & Hob'
        : ((question.kind === 'motif' ? question.offers.at(-1) : question.offers.at(-1)?.id) ?? '');
      const answered = giveAnswer(design, question, answer).design;
      expect(readAnswer(answered, question)).toBe(isTyped(question) ? shownAs(question, answer) : answer);
      expect(answered.elements.map((e) => e.id)).toEqual(design.elements.map((e) => e.id));
      expect({ ...answered, elements: [] }).toEqual({ ...design, elements: [] });
    }
  });

  it.each(READY_MADE)('$id: any drawing and any lettering offered can be cut at half size', async (b) => {
    for (const question of b.questions) {
      if (isTyped(question)) continue;
      const offers = question.kind === 'motif' ? question.offers : question.offers.map((o) => o.id);
      for (const offer of offers) {
        const answered = giveAnswer(b.design, question, offer).design;
        expect(await lookAt(answered, 'half'), `${question.id} ${offer}`).toEqual([]);
      }
    }
  });

  it.each(READY_MADE)('$id: long answers grow smaller instead of running over', async ({ design, questions }) => {
    const long = questions
      .filter(isTyped)
      .reduce((d, q) => giveAnswer(d, q, 'THE FAIR MEADOW ORCHARDS AND CELLARS OF OAK'.slice(0, 40)).design, design);
    const said = await lookAt(long, 'large');
    expect(said.filter((s) => /^text-(overlap|too-long-for-ring|outside-plate)|too-near-rim/.test(s))).toEqual([]);
  });

  it('takes a drawing of the person’s own in the place of the one that stands in, and one of ours back again', () => {
    const { design, questions } = READY_MADE.find(({ id }) => id === 'drawing-and-ring')!;
    const question = questions.find((q) => q.kind === 'motif')!;
    const drawing = { name: 'owl.svg', path: 'M0 0L1 0L1 1Z', width: 1 };
    const own = addArtwork(design, drawing, [], 250, question.elements[0]).design;
    expect(own.elements.find((e) => e.id === 'motif')).toMatchObject({ kind: 'artwork', name: 'owl.svg', size: 0.8 });
    expect(readAnswer(own, question)).toBe('');
    const back = giveAnswer(own, question, 'bell').design;
    expect(designSchema.parse(back)).toEqual(giveAnswer(design, question, 'bell').design);
  });

  it('says nothing where nothing is answered', () => {
    for (const { design, questions } of READY_MADE) {
      const emptied = questions.filter(isTyped).reduce((d, q) => giveAnswer(d, q, '  ').design, design);
      for (const question of questions.filter(isTyped)) expect(readAnswer(emptied, question)).toBe('');
    }
  });

  it('does not ask what the design no longer has', () => {
    for (const { design, questions } of READY_MADE)
      for (const question of questions) expect(readAnswer({ ...design, elements: [] }, question)).toBeUndefined();
  });
});

describe('initialsOf', () => {
  it.each([
    ['Otto & Beata', ['O', 'B']],
    ['olive and bram', ['O', 'B']],
    ['Jörg und Élodie', ['J', 'É']],
    ['Ana y Luis', ['A', 'L']],
    ['Anne et Luc', ['A', 'L']],
    ['Sandy', ['S']],
    ['Yvonne', ['Y']],
    ['', []],
    [' & ', []],
    ['A & B & C', ['A', 'B']],
  ])('%s', (names, initials) => {
    expect(initialsOf(names)).toEqual(initials);
  });
});
