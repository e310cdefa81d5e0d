import { describe, expect, it } from 'vitest';
import { mixEyes, LENS_DEG, placeEye, turnEye, zoomEye, type Eye } from '../../../web/barrel/solid/eye.ts';

const EYE: Eye = { turn: 0, rise: 0, at: [10, 20, -30], reachMm: 300, wide: 1 };
const TAN = Math.tan((LENS_DEG * Math.PI) / 360);

describe('where the barrel is looked at from', () => {
  it('stands straight before it, so far away that all of it is seen in any picture', () => {
    expect(placeEye(EYE, 2)).toEqual([10, 20, expect.closeTo(-30 + 300 / TAN, 6)]);
    expect(placeEye(EYE, 0.5)[2]).toBeCloseTo(-30 + 600 / TAN, 6);
    expect(placeEye({ ...EYE, wide: 2 }, 2)[2]).toBeCloseTo(-30 + 300 / TAN, 6);
  });

  it('keeps its distance while it turns, and never goes under the floor or behind', () => {
    const [x, y, z] = placeEye(turnEye(EYE, 40, 25), 1);
    expect(Math.hypot(x - 10, y - 20, z + 30)).toBeCloseTo(300 / TAN, 6);
    expect(turnEye(EYE, 999, -999)).toMatchObject({ turn: 85, rise: -8 });
    expect(turnEye(EYE, -999, 999)).toMatchObject({ turn: -85, rise: 84 });
  });

  it('zooms within limits of the whole', () => {
    expect(zoomEye(EYE, 0.001, 300).reachMm).toBeCloseTo(66, 9);
    expect(zoomEye(EYE, 1000, 300).reachMm).toBeCloseTo(450, 9);
  });

  it('glides from one view to another', () => {
    const to: Eye = { turn: 30, rise: 10, at: [0, 0, 0], reachMm: 100, wide: 2 };
    expect(mixEyes(EYE, to, 0)).toEqual(EYE);
    expect(mixEyes(EYE, to, 1)).toEqual(to);
  });
});
