import { describe, expect, it } from 'vitest';
import { createStockMemory, type NumbersFound } from '../../web/page/stock-memory.ts';

/** As much of a browser's storage as is asked for here. */
function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  } as Storage;
}

const OWN: NumbersFound = { own: '812-ab' };

describe('a shop’s own numbers', () => {
  it('are missed only where there were some, until a person says that there are none', () => {
    const kept = storage();
    const memory = createStockMemory(() => kept, '/shop/');
    expect(memory.compare('none')).toBeUndefined();
    expect(memory.compare(OWN)).toBeUndefined();
    // the next day, in a new page; another shop at the same host had none
    const later = createStockMemory(() => kept, '/shop/');
    expect(later.compare('none')).toEqual({ why: 'gone' });
    expect(later.compare('none')).toEqual({ why: 'gone' });
    expect(createStockMemory(() => kept, '/other/').compare('none')).toBeUndefined();
    later.forget();
    expect(later.compare('none')).toBeUndefined();
    expect(later.compare(OWN)).toBeUndefined();
    expect(later.compare('none')).toEqual({ why: 'gone' });
  });

  it('that did not come or can not be read are told, whatever was before', () => {
    const memory = createStockMemory(storage, '/');
    expect(memory.compare({ why: 'late' })).toEqual({ why: 'late' });
    expect(memory.compare({ why: 'unreadable', problem: () => 'Line 3' })).toMatchObject({ why: 'unreadable' });
    expect(memory.compare('none')).toBeUndefined();
  });

  it.each([
    ['that is not there', () => undefined],
    [
      'that is shut',
      () => {
        throw new Error('SecurityError');
      },
    ],
  ])('are never asked of a storage %s', (_, none) => {
    const memory = createStockMemory(none, '/');
    expect(memory.compare(OWN)).toBeUndefined();
    expect(memory.compare('none')).toBeUndefined();
    memory.forget();
  });
});
