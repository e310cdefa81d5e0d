import { describe, expect, it } from 'vitest';
import type { Bridge } from '../../../geometry/bridges/types.ts';
import { bridgeCommand } from '../../../web/design/stage/bridge-keys.ts';
import {
  barOf,
  bridgeAt,
  dragged,
  handlesOf,
  HANDLE_OFF_PX,
  holdAt,
  middleOf,
} from '../../../web/design/stage/bridge-line.ts';
import { lookAt, toPlate, viewOf, WHOLE, type View } from '../../../web/design/stage/canvas/view.ts';

const VIEW: View = { scale: 4, leftPx: 300, topPx: 300 };
/** Upright, 10 mm long, on the plate's right. */
const LINE = { from: { x: 20, y: -5 }, to: { x: 20, y: 5 } };

function bridge(id: string, line: typeof LINE): Bridge {
  return { ...line, id, elementIds: ['a'], widthMm: 2, outline: [], widens: false, shapeId: 'a/0' };
}

describe('a bridge held on the stage', () => {
  it('has handles that stand off its ends, along it', () => {
    const { from, to } = handlesOf(LINE, VIEW);
    expect(from).toEqual({ leftPx: 380, topPx: 320 + HANDLE_OFF_PX });
    expect(to).toEqual({ leftPx: 380, topPx: 280 - HANDLE_OFF_PX });
  });

  it('is held by its body or an end, a finger reaching farther than a mouse', () => {
    expect(holdAt(LINE, 2, VIEW, { leftPx: 382, topPx: 300 }, false)).toBe('body');
    expect(holdAt(LINE, 2, VIEW, { leftPx: 380, topPx: 261 }, false)).toBe('to');
    expect(holdAt(LINE, 2, VIEW, { leftPx: 378, topPx: 340 }, false)).toBe('from');
    expect(holdAt(LINE, 2, VIEW, { leftPx: 400, topPx: 300 }, false)).toBeUndefined();
    expect(holdAt(LINE, 2, VIEW, { leftPx: 400, topPx: 300 }, true)).toBe('body');
  });

  it('follows the pointer by its body and turns about its middle by an end', () => {
    const moved = dragged(LINE, 'body', { x: 20, y: 0 }, { x: 23, y: 1 });
    expect(moved).toEqual({ from: { x: 23, y: -4 }, to: { x: 23, y: 6 } });
    // From straight above the middle to straight right of it: a quarter turn clockwise.
    const turned = dragged(LINE, 'to', { x: 20, y: 9 }, { x: 30, y: 0 });
    expect(middleOf(turned).x).toBeCloseTo(20, 9);
    expect(turned.to.x).toBeCloseTo(25, 9);
    expect(turned.to.y).toBeCloseTo(0, 9);
    const other = dragged(LINE, 'from', { x: 20, y: -9 }, { x: 10, y: 0 });
    expect(other.from.x).toBeCloseTo(15, 9);
  });

  it('is drawn as wide as it is', () => {
    const corners = barOf(LINE, 2);
    expect(corners.map((p) => p.x).sort((p, q) => p - q)).toEqual([19, 19, 21, 21]);
  });

  it('is the nearest of those in reach', () => {
    const far = bridge('far', { from: { x: 24, y: -5 }, to: { x: 24, y: 5 } });
    const near = bridge('near', LINE);
    expect(bridgeAt([far, near], VIEW, { leftPx: 384, topPx: 300 }, false)?.id).toBe('near');
    expect(bridgeAt([far, near], VIEW, { leftPx: 200, topPx: 300 }, true)).toBeUndefined();
  });
});

describe('keys', () => {
  it('move, turn, widen, remove and let go', () => {
    expect(bridgeCommand('ArrowUp', false)).toEqual({ kind: 'nudge', right: 0, up: 0.5 });
    expect(bridgeCommand('ArrowLeft', true)).toEqual({ kind: 'nudge', right: -2, up: 0 });
    expect(bridgeCommand('[', false)).toEqual({ kind: 'turn', deg: -5 });
    expect(bridgeCommand('+', false)).toEqual({ kind: 'widen', quarters: 1 });
    expect(bridgeCommand('Delete', false)).toEqual({ kind: 'remove' });
    expect(bridgeCommand('Escape', false)).toEqual({ kind: 'leave' });
    expect(bridgeCommand('a', false)).toBeUndefined();
  });
});

describe('lookAt', () => {
  const frame = { size: { width: 800, height: 600 }, worldMm: 250, marginPx: 30 };

  it('brings a place to the middle and never takes it farther away', () => {
    const near = lookAt(WHOLE, frame, { x: 60, y: -40 }, 4);
    const middle = toPlate(viewOf(near, frame), { leftPx: 400, topPx: 300 });
    expect(middle.x).toBeCloseTo(60, 9);
    expect(middle.y).toBeCloseTo(-40, 9);
    expect(lookAt({ ...near, zoom: 9 }, frame, { x: 0, y: 0 }, 4).zoom).toBe(9);
  });
});
