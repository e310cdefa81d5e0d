import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { FaceSource } from '../../geometry/adapters/face.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design, DesignElement } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { turnPoint } from '../../geometry/measure/clock.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Point } from '../../geometry/shapes.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

/** A move of the whole design moves every bridge with it: to this, the grid and the rounding of a turn. */
const SAME_MM = 0.002;

const ELEMENTS: readonly DesignElement[] = [
  {
    kind: 'ringText',
    id: 'top',
    text: 'Perry & Old Oak',
    face: 'playfair-display-700',
    inner: 0.64,
    outer: 0.8,
    middleDeg: 0,
    reads: 'outward',
    tracking: 0.04,
    fit: 'natural',
  },
  {
    kind: 'ringText',
    id: 'bottom',
    text: 'CASK 2086',
    face: 'stardos-stencil-700',
    inner: 0.66,
    outer: 0.78,
    middleDeg: 180,
    reads: 'inward',
    tracking: 0.04,
    fit: 'natural',
  },
  {
    kind: 'lineText',
    id: 'line',
    text: 'O & B',
    face: 'abril-fatface-400',
    x: 0,
    y: 0,
    capHeight: 0.3,
    turnDeg: 0,
    tracking: 0,
    fit: 'natural',
  },
];

function designWith(elements: readonly DesignElement[]): Design {
  return {
    ...emptyDesign(),
    plates: [{ id: 'plate', name: 'Plate', diameter: { mm: 400 }, quantity: 1 }],
    elements: [...elements],
  };
}

function turned(element: DesignElement, deg: number): DesignElement {
  if (element.kind === 'ringText') return { ...element, middleDeg: element.middleDeg + deg };
  return element.kind === 'lineText' ? { ...element, turnDeg: element.turnDeg + deg } : element;
}

/** Every bridge of one is a bridge of the other after the move, and there are as many. */
function expectSameBridges(of: PlateResult, as: PlateResult, move: (p: Point) => Point): void {
  expect(of.bridges).toHaveLength(as.bridges.length);
  for (const bridge of as.bridges) {
    const [from, to] = [move(bridge.from), move(bridge.to)];
    const off = Math.min(
      ...of.bridges.map((b) =>
        Math.min(
          Math.max(Math.hypot(b.from.x - from.x, b.from.y - from.y), Math.hypot(b.to.x - to.x, b.to.y - to.y)),
          Math.max(Math.hypot(b.to.x - from.x, b.to.y - from.y), Math.hypot(b.from.x - to.x, b.from.y - to.y)),
        ),
      ),
    );
    expect(off).toBeLessThan(SAME_MM);
  }
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
