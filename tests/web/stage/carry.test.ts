import { describe, expect, it } from 'vitest';
import type { Border, DesignElement, LineText, Motif, RingText } from '../../../geometry/design/schema.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { clockPoint } from '../../../geometry/measure/clock.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { carried, type Carry, type Hold } from '../../../web/design/stage/carry/carry.ts';
import { holdAt, knobsOf } from '../../../web/design/stage/element-hold.ts';
import { borderMap, movedExtent, moveOf, movePoint } from '../../../web/design/stage/carry/ghost.ts';
import { placingCommand, walkTo } from '../../../web/design/stage/carry/placing-keys.ts';
import { border, lay, lineText, ringText } from '../../layout/set-up.ts';

const RADIUS_MM = 260;
const STAR: Motif = {
  kind: 'motif',
  id: 'star',
  motif: 'star',
  x: 0,
  y: 0.5,
  size: 0.2,
  turnDeg: 0,
  around: { count: 4 },
};

function drag(
  chosen: readonly DesignElement[],
  extents: readonly Extent[],
  hold: Hold,
  from: Point,
  to: Point,
  reachMm = 0,
) {
  const carry: Carry = { hold, chosen, extents, radiusMm: RADIUS_MM, start: from, acrossMm: 10 };
  return carried(carry, to, reachMm).elements;
}

describe('dragging', () => {
  it('a line goes with the hand, a ring text along its ring, and across only when pulled', async () => {
    const [line, ring] = [lineText({}), ringText({})];
    const { extents } = await lay([line, ring]);
    const [moved] = drag([line], extents, 'body', { x: 0, y: 0 }, { x: 26, y: -52 }) as [LineText];
    expect(moved.x).toBeCloseTo(0.1);
    expect(moved.y).toBeCloseTo(-0.2);
    const [swung] = drag([ring], extents, 'body', clockPoint(208, 0), clockPoint(215, 70)) as [RingText];
    expect(swung).toMatchObject({ inner: ring.inner, outer: ring.outer });
    expect(swung.middleDeg).toBeCloseTo(70);
    const [pulled] = drag([ring], extents, 'body', clockPoint(208, 0), clockPoint(172, 0)) as [RingText];
    expect(pulled.inner).toBeCloseTo(ring.inner - 0.1);
    expect(pulled.outer - pulled.inner).toBeCloseTo(ring.outer - ring.inner);
  });

  it('no band leaves the plate, and the others chosen go along', async () => {
    const [rim, ring] = [border({}), ringText({ middleDeg: 30 })];
    const { extents } = await lay([rim, ring]);
    const [out] = drag([rim], extents, 'body', clockPoint(240, 10), clockPoint(400, 10)) as [Border];
    expect(out.outer).toBe(1);
    expect(out.outer - out.inner).toBeCloseTo(0.05);
    const both = drag([ring, lineText({ x: 0, y: 0.5 })], extents, 'body', clockPoint(208, 30), clockPoint(208, 120));
    expect(both[1]).toMatchObject({ turnDeg: 90 });
    expect((both[1] as LineText).x).toBeCloseTo(0.5);
  });

  it('knobs turn and size about the middle', async () => {
    const line = lineText({ x: 0.1, y: 0.1 });
    const { extents } = await lay([line]);
    const middle = { x: 26, y: 26 };
    const [turned] = drag([line], extents, 'turn', { x: 26, y: 80 }, { x: 80, y: 26 }) as [LineText];
    expect(turned.turnDeg).toBeCloseTo(90);
    const [large] = drag([line], extents, 'size', { x: 56, y: 26 }, { x: 86, y: middle.y }) as [LineText];
    expect(large.capHeight).toBeCloseTo(line.capHeight * 2);
    const [wide] = drag([border({})], extents, 'size', clockPoint(247, 0), clockPoint(253, 0)) as [Border];
    expect((wide.inner + wide.outer) / 2).toBeCloseTo(0.925);
  });
});

describe('the picture that is dragged', () => {
  it('lies where the layout then puts the true letters', async () => {
    const pairs: [DesignElement, DesignElement][] = [
      [lineText({}), lineText({ x: 0.2, y: -0.3, turnDeg: 40, capHeight: 0.15 })],
      [ringText({}), ringText({ middleDeg: 77 })],
      [STAR, { ...STAR, x: 0.3, y: 0.2, size: 0.3, turnDeg: 25 }],
    ];
    for (const [before, after] of pairs) {
      const [from, to] = [await lay([before]), await lay([after])];
      from.shapes.forEach((shape, i) => {
        const part = {
          elementId: before.id,
          region: { outer: [], holes: [] },
          middle: shape.placement,
          copy: shape.word,
        };
        const moved = movePoint(shape.placement, moveOf(part, before, after, RADIUS_MM));
        const truly = to.shapes[i]?.placement;
        expect(moved.x).toBeCloseTo(truly?.x ?? NaN, 6);
        expect(moved.y).toBeCloseTo(truly?.y ?? NaN, 6);
      });
      from.extents.forEach((extent, i) => {
        const moved = movedExtent(extent, before, after, RADIUS_MM);
        const truly = to.extents[i];
        if (moved.kind === 'box' && truly?.kind === 'box') {
          expect(moved.widthMm).toBeCloseTo(truly.widthMm, 3);
          expect(moved.x).toBeCloseTo(truly.x, 6);
        } else if (moved.kind === 'sector' && truly?.kind === 'sector') {
          expect(moved.startDeg).toBeCloseTo(truly.startDeg, 6);
          expect(moved.outerMm).toBeCloseTo(truly.outerMm, 6);
        } else throw new Error('extents of two kinds');
      });
    }
  });

  it('carries a border from edge to edge', () => {
    const [from, to] = [border({ inner: 0.8, outer: 0.9 }), border({ inner: 0.5, outer: 0.7 })];
    const carry = borderMap(from, to, 100);
    const away = (p: Point) => Math.hypot(p.x, p.y);
    expect(away(carry(clockPoint(80, 33)))).toBeCloseTo(50);
    expect(away(carry(clockPoint(90, 33)))).toBeCloseTo(70);
  });
});

describe('holding', () => {
  const view = { scale: 1, leftPx: 300, topPx: 300 };
  const stage = { width: 600, height: 600 };
  const extent: Extent = { kind: 'box', elementId: 'a', x: 0, y: 0, widthMm: 100, heightMm: 40, turnDeg: 0 };

  it('knobs come before the body, the turning one hangs below where there is no room above', () => {
    const knobs = knobsOf(extent, view, stage);
    expect(holdAt([extent], [], ['a'], view, stage, knobs.size, false)?.hold).toBe('size');
    expect(holdAt([extent], [], ['a'], view, stage, knobs.turn!, false)?.hold).toBe('turn');
    expect(holdAt([extent], [], ['a'], view, stage, { leftPx: 300, topPx: 300 }, false)?.hold).toBe('body');
    expect(holdAt([extent], [], ['a'], view, stage, { leftPx: 10, topPx: 10 }, true)).toBeUndefined();
    const high = knobsOf(extent, { ...view, topPx: 30 }, stage);
    expect(high.turn?.topPx).toBeGreaterThan(30);
  });

  it('keys: fine with Shift, none where Ctrl means another thing', () => {
    const plain = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };
    expect(placingCommand({ ...plain, key: 'ArrowLeft' })).toEqual({ kind: 'nudge', right: -1, up: 0 });
    expect(placingCommand({ ...plain, key: 'ArrowUp', shiftKey: true })).toEqual({ kind: 'nudge', right: 0, up: 0.1 });
    expect(placingCommand({ ...plain, key: '+' })).toBeUndefined();
    expect(placingCommand({ ...plain, key: '+', altKey: true })).toEqual({ kind: 'size', steps: 1 });
    expect(placingCommand({ ...plain, key: 'd', ctrlKey: true })).toEqual({ kind: 'duplicate' });
    expect(placingCommand({ ...plain, key: 'z', ctrlKey: true })).toBeUndefined();
    expect(placingCommand({ ...plain, key: 'Delete' })).toEqual({ kind: 'remove' });
  });

  it('Tab walks and leaves at either end', () => {
    expect(walkTo(['a', 'b'], undefined, false)).toBe('a');
    expect(walkTo(['a', 'b'], 'a', false)).toBe('b');
    expect(walkTo(['a', 'b'], 'b', false)).toBeUndefined();
    expect(walkTo(['a', 'b'], 'b', true)).toBe('a');
    expect(walkTo(['a', 'b'], 'a', true)).toBeUndefined();
    expect(walkTo([], undefined, false)).toBeUndefined();
  });
});
