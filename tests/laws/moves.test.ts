import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { FaceSource } from '../../geometry/adapters/face.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import type { DesignElement } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { turnPoint } from '../../geometry/measure/clock.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { designWith, ELEMENTS, type Move, offAfter, SAME_MM, turned } from './moves.ts';

/** Every bridge of one is a bridge of the other after the move, and there are as many. */
function expectSameBridges(of: PlateResult, as: PlateResult, move: Move): void {
  expect(of.bridges).toHaveLength(as.bridges.length);
  for (const off of offAfter(of.bridges, as.bridges, move)) expect(off).toBeLessThan(SAME_MM);
}

describe('bridges keep their place on the letter', () => {
  let faces: FaceSource;
  let straight: PlateResult;
  const plateOf = (elements: readonly DesignElement[]) =>
    makePlate(designWith(elements), 'plate', faces, createStore(), BUILT_IN);

  beforeAll(async () => {
    ({ faces } = await loadFaces(designWith(ELEMENTS)));
    straight = plateOf(ELEMENTS);
  });

  it('has bridges to look at', () => {
    expect(straight.bridges.length).toBeGreaterThan(20);
    expect(straight.findings.filter((f) => f.severity === 'stop')).toEqual([]);
  });

  it.each([37.5, 90, 180])('when the whole design is turned by %d degrees', (deg) => {
    const after = plateOf(ELEMENTS.map((e) => turned(e, deg)));
    expectSameBridges(after, straight, (p) => turnPoint(p, deg));
  });

  it('when the elements stand in another order', () => {
    expectSameBridges(plateOf([...ELEMENTS].reverse()), straight, (p) => p);
  });

  it('when another element is added far from them', () => {
    const border: DesignElement = {
      kind: 'border',
      id: 'edge',
      style: 'beads',
      inner: 0.9,
      outer: 0.94,
      count: 'auto',
    };
    const after = plateOf([...ELEMENTS, border]);
    expectSameBridges(
      { ...after, bridges: after.bridges.filter((b) => !b.elementIds.includes('edge')) },
      straight,
      (p) => p,
    );
  });

  it('when a store has seen other plates before', () => {
    const store = createStore();
    const other = designWith(ELEMENTS.map((e) => turned(e, 11)));
    makePlate(other, 'plate', faces, store, BUILT_IN);
    const solved = store.solved;
    const again = makePlate(designWith(ELEMENTS), 'plate', faces, store, BUILT_IN);
    expectSameBridges(again, straight, (p) => p);
    expect(store.solved).toBe(solved);
  });

  it('and one changed letter leaves the work on all others done', () => {
    const store = createStore();
    makePlate(designWith(ELEMENTS), 'plate', faces, store, BUILT_IN);
    const [solved, flattened] = [store.solved, store.outlines.flattened];
    const changed = ELEMENTS.map((e) => (e.kind === 'lineText' ? { ...e, text: 'O & D' } : e));
    makePlate(designWith(changed), 'plate', faces, store, BUILT_IN);
    expect(store.solved - solved).toBe(1);
    expect(store.outlines.flattened - flattened).toBe(1);
  });
});
