import { describe, expect, it } from 'vitest';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { addLineText } from '../../web/state/actions/elements/add-line-text.ts';
import { addRingText } from '../../web/state/actions/elements/add-ring-text.ts';
import { setStock } from '../../web/state/actions/set-fields.ts';
import { setText } from '../../web/state/actions/elements/set-text.ts';
import { createDesignStore } from '../../web/state/design-store.ts';

function storeWithTwoTexts() {
  const first = addRingText(emptyDesign()).design;
  const both = addLineText(first).design;
  const [ring, line] = both.elements.map((e) => e.id);
  if (ring === undefined || line === undefined) throw new Error('two elements expected');
  const store = createDesignStore(both);
  const type = (id: string, text: string) =>
    store.getState().apply(setText(store.getState().history.present, id, text));
  const texts = () => store.getState().history.present.elements.map((e) => ('text' in e ? e.text : ''));
  return { store, type, texts, ring, line, start: both };
}

describe('undo', () => {
  it('takes typing in one field as one step', () => {
    const { store, type, texts, ring, start } = storeWithTwoTexts();
    for (const text of ['P', 'PE', 'PER', 'PERR', 'PERRY']) type(ring, text);
    expect(texts()[0]).toBe('PERRY');
    store.getState().undo();
    expect(store.getState().history.present).toBe(start);
    store.getState().redo();
    expect(texts()[0]).toBe('PERRY');
  });

  it('begins a new step in another field, and in the same field after it was left', () => {
    const { store, type, texts, ring, line } = storeWithTwoTexts();
    type(ring, 'A');
    type(line, '1');
    type(ring, 'AB');
    store.getState().closeMerge();
    type(ring, 'ABC');
    expect(store.getState().history.past).toHaveLength(4);
    store.getState().undo();
    expect(texts()).toEqual(['AB', '1']);
    store.getState().undo();
    expect(texts()).toEqual(['A', '1']);
  });

  it('goes all the way back and forward again', () => {
    const { store, type, ring, start } = storeWithTwoTexts();
    for (let i = 0; i < 40; i++) {
      type(ring, `N${i}`);
      store.getState().closeMerge();
    }
    const end = store.getState().history.present;
    for (let i = 0; i < 60; i++) store.getState().undo();
    expect(store.getState().history.present).toBe(start);
    for (let i = 0; i < 60; i++) store.getState().redo();
    expect(store.getState().history.present).toBe(end);
  });

  it('drops what was undone once something else is done', () => {
    const { store, type, ring, line } = storeWithTwoTexts();
    type(ring, 'A');
    store.getState().undo();
    type(line, '9');
    expect(store.getState().history.future).toHaveLength(0);
  });

  it('does not join typing after an undo to the step before it', () => {
    const { store, type, texts, ring } = storeWithTwoTexts();
    type(ring, 'A');
    store.getState().closeMerge();
    type(ring, 'B');
    store.getState().undo();
    type(ring, 'C');
    store.getState().undo();
    expect(texts()[0]).toBe('A');
  });

  it('takes each choice as a step, and typed numbers as one', () => {
    const { store } = storeWithTwoTexts();
    const apply = (part: Parameters<typeof setStock>[1]) =>
      store.getState().apply(setStock(store.getState().history.present, part));
    for (const material of ['mild-steel', 'hdpe', 'pvc']) apply({ material });
    expect(store.getState().history.past).toHaveLength(3);
    for (const thicknessMm of [1, 1.2, 1.25]) apply({ thicknessMm });
    expect(store.getState().history.past).toHaveLength(4);
    store.getState().undo();
    store.getState().undo();
    expect(store.getState().history.present.stock.material).toBe('hdpe');
  });

  it('records neither a load nor a change that changes nothing', () => {
    const { store, type, ring } = storeWithTwoTexts();
    store.getState().apply({ design: emptyDesign(), undo: 'none' });
    expect(store.getState().history.past).toHaveLength(0);
    type(ring, 'no such element any more');
    expect(store.getState().history.past).toHaveLength(0);
  });
});
