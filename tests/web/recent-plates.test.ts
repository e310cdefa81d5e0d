import { describe, expect, it } from 'vitest';
import { motifById } from '../../geometry/motifs/catalogue.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { setOrder, setStock } from '../../web/state/actions/set-fields.ts';
import { setPlate } from '../../web/state/actions/plates/set-plate.ts';
import { setTitle } from '../../web/state/actions/agreed/set-title.ts';
import { createRecentPlates } from '../../web/worker/recent-plates.ts';

const design = emptyDesign();
const make = (plateId: string) =>
  makePlate(design, plateId, { get: () => undefined, motif: motifById }, createStore(), BUILT_IN);

describe('recent plates', () => {
  it('serve again for an equal design, whatever its title and order, and for nothing else', () => {
    const recent = createRecentPlates(4);
    const plate = make('large');
    recent.put(design, 'large', plate);
    expect(recent.get(structuredClone(design), 'large')).toBe(plate);
    expect(recent.get(setTitle(design, 'Other').design, 'large')).toBe(plate);
    expect(recent.get(setOrder(design, { who: 'Marrow Lane' }).design, 'large')).toBe(plate);
    expect(recent.get(design, 'half')).toBeUndefined();
    expect(recent.get(setStock(design, { thicknessMm: 2 }).design, 'large')).toBeUndefined();
    expect(recent.get(setPlate(design, 'half', { quantity: 2 }).design, 'large')).toBeUndefined();
  });

  it('keep the newest few', () => {
    const recent = createRecentPlates(2);
    const thick = (mm: number) => setStock(design, { thicknessMm: mm }).design;
    const plate = make('large');
    recent.put(thick(1), 'large', plate);
    recent.put(thick(2), 'large', plate);
    recent.put(thick(3), 'large', plate);
    recent.get(thick(1), 'large');
    recent.put(thick(4), 'large', plate);
    expect([1, 2, 3, 4].map((mm) => recent.get(thick(mm), 'large') !== undefined)).toEqual([true, false, true, true]);
  });
});
