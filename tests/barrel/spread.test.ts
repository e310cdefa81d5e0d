import { describe, expect, it } from 'vitest';
import { layOut } from '../../geometry/layout/lay-out.ts';
import { middleOf, spreadMm, type Spread } from '../../geometry/layout/spread.ts';
import type { Layout } from '../../geometry/layout/placed.ts';
import type { LineText } from '../../geometry/design/schema.ts';
import { border, designOf, facesOf, lineText, RULES } from '../layout/set-up.ts';

const RADIUS_MM = 330;
const LINE = { text: 'HHHHHHHHH', tracking: 0.1, capHeight: 0.2 };

async function both(element: LineText, lines: Spread['lines'] = 'along-hoops'): Promise<[Layout, Layout]> {
  const faces = await facesOf(element);
  const design = designOf([element, border({})]);
  const lay = (spread?: Spread) => layOut(design, 520, RULES, faces, undefined, spread ? { spread } : {});
  return [lay(), lay({ radiusMm: RADIUS_MM, lines })];
}
const middles = (layout: Layout) => layout.shapes.filter((s) => s.elementId === 'line').map(middleOf);
/** Seen from straight in front, a point so far round stands at R sin(arc / R): orthographic projection of a circle. */
const seen = (arcMm: number) => RADIUS_MM * Math.sin(arcMm / RADIUS_MM);

describe('lettering on a rolled plate', () => {
  it('is seen evenly set from straight in front', async () => {
    const [flat, spread] = await both(lineText(LINE));
    const xs = middles(spread).map((p) => seen(p.x));
    const steps = xs.slice(1).map((x, i) => x - xs[i]!);
    expect(xs).toHaveLength(9);
    for (const step of steps) expect(Math.abs(step - steps[0]!)).toBeLessThan(1e-6);
    middles(flat).forEach((p, i) => expect(Math.abs(xs[i]! - p.x)).toBeLessThan(1e-6));
    // And it was not so before.
    const before = middles(flat).map((p) => seen(p.x));
    expect(before[1]! - before[0]!).toBeLessThan(0.98 * steps[0]!);
  });

  it('keeps its letters upright, at their height, and grows the box that it is held by', async () => {
    const [flat, spread] = await both(lineText(LINE));
    spread.shapes.forEach((s, i) => {
      expect(s.placement.turnDeg).toBe(flat.shapes[i]!.placement.turnDeg);
      expect(s.placement.y).toBe(flat.shapes[i]!.placement.y);
    });
    const widthOf = (l: Layout) => l.extents.flatMap((e) => (e.kind === 'box' ? [e.widthMm] : []))[0]!;
    expect(widthOf(spread)).toBeGreaterThan(widthOf(flat));
  });

  it('up the staves moves lines apart and not letters', async () => {
    const [flat, spread] = await both(lineText({ ...LINE, y: 0.4 }), 'up-staves');
    middles(spread).forEach((p, i) => {
      const q = middles(flat)[i]!;
      expect(p.x).toBe(q.x);
      expect(Math.abs(seen(p.y) - q.y)).toBeLessThan(1e-6);
    });
  });

  it('moves the words of a face whose letters join as one', async () => {
    const [flat, spread] = await both(lineText({ text: 'Perry cider', face: 'great-vibes-400' }));
    const by = spread.shapes.map((s, i) => s.placement.x - flat.shapes[i]!.placement.x);
    for (const word of [0, 1]) {
      const moves = by.filter((_, i) => spread.shapes[i]!.elementId === 'line' && spread.shapes[i]!.word === word);
      for (const m of moves) expect(m).toBeCloseTo(moves[0]!, 9);
    }
  });

  it('leaves what goes round the centre as it is', async () => {
    const [flat, spread] = await both(lineText(LINE));
    expect(spread.shapes.filter((s) => s.elementId === 'border')).toEqual(
      flat.shapes.filter((s) => s.elementId === 'border'),
    );
  });
});

it('far round the stretching goes on evenly, without a jump', () => {
  const most = RADIUS_MM * Math.sin((70 * Math.PI) / 180);
  expect(spreadMm(most + 1e-9, RADIUS_MM) - spreadMm(most - 1e-9, RADIUS_MM)).toBeLessThan(1e-7);
  expect(spreadMm(-most - 10, RADIUS_MM)).toBeCloseTo(-spreadMm(most + 10, RADIUS_MM), 9);
  expect(spreadMm(2 * RADIUS_MM, RADIUS_MM)).toBeGreaterThan(spreadMm(RADIUS_MM, RADIUS_MM));
});
