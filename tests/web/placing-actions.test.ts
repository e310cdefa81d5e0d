import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { emptyDesign, newLineText, newRingText } from '../../geometry/design/defaults.ts';
import { designSchema, type Design, type LineText, type Motif, type RingText } from '../../geometry/design/schema.ts';
import type { Extent } from '../../geometry/layout/placed.ts';
import { layOut } from '../../geometry/layout/lay-out.ts';
import { alignElements } from '../../web/state/actions/elements/align-elements.ts';
import { copyRound } from '../../web/state/actions/elements/copy-round.ts';
import { duplicateElements } from '../../web/state/actions/elements/duplicate-elements.ts';
import { lockElements } from '../../web/state/actions/elements/lock-elements.ts';
import { plainDeg, shiftElement, sizeElement } from '../../web/state/actions/elements/move-element.ts';
import { placeElements } from '../../web/state/actions/elements/place-elements.ts';
import { uprightBox } from '../../web/state/actions/elements/reach.ts';
import { removeElements } from '../../web/state/actions/elements/remove-elements.ts';
import { spreadElements } from '../../web/state/actions/elements/spread-elements.ts';
import { createDesignStore } from '../../web/state/design-store.ts';
import { RULES } from '../layout/set-up.ts';

const FACE = 'bebas-neue-400';
const RADIUS_MM = 260;
const star: Motif = { kind: 'motif', id: 'star', motif: 'star', x: 0.4, y: 0.1, size: 0.1, turnDeg: 0, around: 'once' };

const START: Design = {
  ...emptyDesign(),
  elements: [
    { ...newRingText('ring-1', FACE), middleDeg: 10 },
    { ...newRingText('ring-2', FACE), text: 'AND MORE', middleDeg: 170, reads: 'inward', inner: 0.5, outer: 0.6 },
    { ...newLineText('line-1', FACE), text: 'ONE', y: 0.3, capHeight: 0.1 },
    { ...newLineText('line-2', FACE), text: 'TWO OF THEM', x: 0.1, y: 0.2, capHeight: 0.05 },
    { ...newLineText('line-3', FACE), text: 'THREE', x: -0.1, y: -0.3, capHeight: 0.1 },
    star,
  ],
};

let extentsOf: (design: Design) => readonly Extent[];
beforeAll(async () => {
  const { faces } = await loadFaces(START);
  extentsOf = (design) => layOut(design, 2 * RADIUS_MM, RULES, faces).extents;
});

const get = <T>(design: Design, id: string): T => {
  const found = design.elements.find((e) => e.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found as T;
};
const line = (design: Design, id: string): LineText => get(design, id);
const ring = (design: Design, id: string): RingText => get(design, id);
const box = (design: Design, id: string) => {
  const extent = extentsOf(design).find((e) => e.elementId === id);
  if (extent?.kind !== 'box') throw new Error(`no box of ${id}`);
  return uprightBox(extent);
};
const LINES = ['line-1', 'line-2', 'line-3'];

describe('placing by hand', () => {
  it('one drag is one step, the next one another, and what changes nothing leaves none', () => {
    const store = createDesignStore(START);
    const steps = () => store.getState().history.past;
    const shift = (n: number) => {
      const state = store.getState();
      state.apply(placeElements(state.history.present, [shiftElement(line(START, 'line-1'), n / 100, 0)]));
    };
    for (let n = 1; n <= 5; n++) shift(n);
    store.getState().closeMerge();
    expect(steps()).toHaveLength(1);
    shift(5);
    expect(steps()).toHaveLength(1);
    shift(9);
    expect(steps()).toHaveLength(2);
  });

  it('locked ones stay and are not removed; unlocked there is no trace of the lock', () => {
    const locked = lockElements(START, ['line-1'], true).design;
    expect(placeElements(locked, [shiftElement(line(locked, 'line-1'), 0.1, 0)]).design).toBe(locked);
    expect(removeElements(locked, ['line-1', 'line-2']).design.elements).toHaveLength(5);
    expect(lockElements(locked, ['line-1'], false).design).toEqual(START);
    expect(lockElements(START, ['line-1'], false).design).toBe(START);
  });

  it('lines up edges and middles as the layout then has them', () => {
    const right = alignElements(START, LINES, 'right', extentsOf(START), RADIUS_MM).design;
    const edges = LINES.map((id) => box(right, id).maxX);
    expect(Math.max(...edges) - Math.min(...edges)).toBeLessThan(1e-6);
    const middle = alignElements(START, LINES, 'centre', extentsOf(START), RADIUS_MM).design;
    const xs = LINES.map((id) => line(middle, id).x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(1e-9);
    const alone = alignElements(START, ['line-2'], 'centre', extentsOf(START), RADIUS_MM).design;
    expect(line(alone, 'line-2').x).toBeCloseTo(0);
  });

  it('gives the radius or the angle of the first one', () => {
    const radius = alignElements(START, ['ring-1', 'ring-2', 'star'], 'radius', extentsOf(START), RADIUS_MM).design;
    expect(ring(radius, 'ring-2').inner).toBeCloseTo(0.71);
    expect(ring(radius, 'ring-2').outer).toBeCloseTo(0.81);
    const away = get<Motif>(radius, 'star');
    expect(Math.hypot(away.x, away.y)).toBeCloseTo(0.76);
    const angle = alignElements(START, ['ring-1', 'ring-2'], 'angle', extentsOf(START), RADIUS_MM).design;
    expect(ring(angle, 'ring-2').middleDeg).toBeCloseTo(10);
  });

  it('spreads down the head with equal metal, round the ring with equal arcs', () => {
    const down = spreadElements(START, LINES, 'height', extentsOf(START), RADIUS_MM).design;
    const [one, two, three] = LINES.map((id) => box(down, id));
    expect(one!.minY - two!.maxY).toBeCloseTo(two!.minY - three!.maxY, 6);
    expect(line(down, 'line-1').y).toBe(0.3);
    const round = spreadElements(START, ['ring-1', 'ring-2'], 'round', extentsOf(START), RADIUS_MM).design;
    const [a, b] = ['ring-1', 'ring-2'].map((id) => extentsOf(round).find((e) => e.elementId === id));
    if (a?.kind !== 'sector' || b?.kind !== 'sector') throw new Error('no sectors');
    const ahead = (from: number, to: number) => (((to - from) % 360) + 360) % 360;
    expect(ahead(a.endDeg, b.startDeg)).toBeCloseTo(ahead(b.endDeg, a.startDeg), 6);
    expect(ring(round, 'ring-1').middleDeg).toBe(10);
  });

  it('copies round: drawings as one that goes round, texts as texts, never on the very centre', () => {
    const six = copyRound(START, 'star', 6).design;
    expect(get<Motif>(six, 'star').around).toEqual({ count: 6 });
    expect(get<Motif>(copyRound(six, 'star', 1).design, 'star').around).toBe('once');
    const texts = copyRound(START, 'ring-1', 3);
    expect(texts.ids).toEqual(['ring-1', 'ring-3', 'ring-4']);
    expect(texts.ids.map((id) => plainDeg(ring(texts.design, id).middleDeg))).toEqual([10, 130, -110]);
    const centred = placeElements(START, [{ ...line(START, 'line-1'), x: 0, y: 0 }]).design;
    expect(copyRound(centred, 'line-1', 3).design).toBe(centred);
    expect(copyRound(START, 'star', 1000).design).toBe(START);
    designSchema.parse(texts.design);
  });

  it('duplicates beside, with the bridges by hand, and not beyond what a design carries', () => {
    const edit = {
      kind: 'drop',
      id: 'bridge-1',
      element: 'line-1',
      shape: 0,
      label: 'letter O',
      at: { x: 0.5, y: 0.5 },
    };
    const worked = designSchema.parse({ ...START, bridges: { ...START.bridges, edits: [edit] } });
    const copied = duplicateElements(worked, ['line-1', 'ring-1'], extentsOf(worked), RADIUS_MM);
    expect(copied.ids).toEqual(['line-4', 'ring-3']);
    expect(copied.design.bridges.edits.map((e) => e.element)).toEqual(['line-1', 'line-4']);
    expect(box(copied.design, 'line-4').maxY).toBeLessThan(box(copied.design, 'line-1').minY);
    designSchema.parse(copied.design);
    const full = { ...START, elements: Array.from({ length: 200 }, (_, i) => newLineText(`l-${i}`, FACE)) };
    expect(duplicateElements(full, ['l-0'], [], RADIUS_MM)).toMatchObject({ design: full, ids: [] });
  });

  it('sizes about the middle and keeps within what the schema takes', () => {
    for (const element of START.elements) {
      for (const factor of [0.001, 0.5, 2, 1000]) {
        const sized = { ...START, elements: [sizeElement(element, factor)] };
        expect(designSchema.safeParse(sized).success).toBe(true);
      }
    }
    const large = ring({ ...START, elements: [sizeElement(ring(START, 'ring-2'), 2)] }, 'ring-2');
    expect(large.inner).toBeCloseTo(0.45);
    expect(large.outer).toBeCloseTo(0.65);
  });
});
