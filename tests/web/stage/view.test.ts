import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../web/barrel/painting/seeded.ts';
import {
  GREATEST_ZOOM,
  panBy,
  toPlate,
  toScreen,
  viewOf,
  WHOLE,
  zoomAbout,
  type Frame,
} from '../../../web/design/stage/canvas/view.ts';

const frame: Frame = { size: { width: 900, height: 600 }, worldMm: 300, marginPx: 30 };

describe('plate to screen', () => {
  it('fits the world into the shorter side less the margin, y up on the plate and down on the screen', () => {
    const view = viewOf(WHOLE, frame);
    expect(view.scale).toBeCloseTo(270 / 300, 12);
    expect(toScreen(view, { x: 0, y: 0 })).toEqual({ leftPx: 450, topPx: 300 });
    expect(toScreen(view, { x: 300, y: 0 }).leftPx).toBeCloseTo(720, 9);
    expect(toScreen(view, { x: 0, y: 300 }).topPx).toBeCloseTo(30, 9);
  });

  it('comes back to where it started, for any look', () => {
    const random = seededRandom(5);
    for (let n = 0; n < 200; n++) {
      const view = viewOf({ zoom: 1 + random() * 15, x: random() - 0.5, y: random() - 0.5 }, frame);
      const p = { x: (random() - 0.5) * 600, y: (random() - 0.5) * 600 };
      const back = toPlate(view, toScreen(view, p));
      expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-9);
    }
  });
});

describe('zooming about a point', () => {
  it('keeps what is under the pointer under it', () => {
    const at = { leftPx: 520, topPx: 260 };
    const before = toPlate(viewOf(WHOLE, frame), at);
    const look = zoomAbout(WHOLE, frame, at, 3);
    const after = toPlate(viewOf(look, frame), at);
    expect(look.zoom).toBe(3);
    expect(after.x).toBeCloseTo(before.x, 9);
    expect(after.y).toBeCloseTo(before.y, 9);
  });

  it('never goes beyond its limits, and all the way out is the whole plate again', () => {
    const at = { leftPx: 700, topPx: 100 };
    const near = zoomAbout(WHOLE, frame, at, 1000);
    expect(near.zoom).toBe(GREATEST_ZOOM);
    expect(zoomAbout(near, frame, { leftPx: 10, topPx: 10 }, 0.0001)).toEqual(WHOLE);
  });
});

describe('panning', () => {
  it('moves the plate by just the dragged pixels', () => {
    const look = { zoom: 4, x: 0, y: 0 };
    const p = { x: 12, y: -7 };
    const before = toScreen(viewOf(look, frame), p);
    const after = toScreen(viewOf(panBy(look, frame, 30, -20), frame), p);
    expect(after.leftPx - before.leftPx).toBeCloseTo(30, 9);
    expect(after.topPx - before.topPx).toBeCloseTo(-20, 9);
  });

  it('leaves the whole plate where it is and stops a zoomed one at its edge', () => {
    expect(panBy(WHOLE, frame, 200, 200)).toEqual(WHOLE);
    const far = panBy({ zoom: 2, x: 0, y: 0 }, frame, -99999, 0);
    expect(far.x).toBe(0.5);
  });
});
