import { loadFace, loadFaces } from '../../../fonts/node-faces.ts';
import { type BuiltBar, solveUnit } from '../../../geometry/bridges/solve-unit.ts';
import { emptyDesign } from '../../../geometry/design/defaults.ts';
import type { Design, DesignElement } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { turnPoint } from '../../../geometry/measure/clock.ts';
import type { Point, Region, Ring } from '../../../geometry/shapes.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { stockRules } from '../../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { drawnLetter } from '../../sweep/case.ts';
import { type Claim, rounded } from '../claim.ts';

/** A move of a letter moves its bridges with it: to this, the grid and the rounding of a turn. */
const SAME_MM = 0.002;
const CAP_MM = 50;
const FACES = ['playfair-display-700', 'alfa-slab-one-400', 'oswald-700', 'stardos-stencil-400', 'uncial-antiqua-400'];
const CHARS = [...'ABDOPQRabdegopq04689&@%#'];

const { rules } = stockRules(
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  'auto',
  BUILT_IN,
);

type Move = (p: Point) => Point;

/** Rotate, mirror, shift, reorder: the same bridges up to that motion. */
export const LAW_CLAIMS: readonly Claim[] = [
  letterClaim('shifted-letters-bridged-otherwise', (p) => ({ x: p.x + 137.31, y: p.y - 88.07 }), moved),
  letterClaim('mirrored-drawings-bridged-otherwise', (p) => ({ x: -p.x, y: p.y }), mirrored),
  letterClaim('reordered-outlines-bridged-otherwise', (p) => p, reordered),
  {
    name: 'turned-designs-bridged-otherwise',
    wanted: `0 bridges off by more than ${SAME_MM} mm`,
    async measure() {
      return plates([
        [ELEMENTS.map((e) => turned(e, 37.5)), (p) => turnPoint(p, 37.5)],
        [ELEMENTS.map((e) => turned(e, 180)), (p) => turnPoint(p, 180)],
      ]);
    },
  },
  {
    name: 'reordered-elements-bridged-otherwise',
    wanted: `0 bridges off by more than ${SAME_MM} mm`,
    async measure() {
      return plates([[[...ELEMENTS].reverse(), (p) => p]]);
    },
  },
];

function letterClaim(name: string, move: Move, change: (regions: readonly Region[], move: Move) => Region[]): Claim {
  return {
    name,
    wanted: `0 letters with a bridge off by more than ${SAME_MM} mm`,
    async measure() {
      const off: string[] = [];
      let [letters, worst] = [0, 0];
      for (const id of FACES) {
        const loaded = await loadFace(id);
        if ('problem' in loaded) throw new Error(loaded.problem);
        for (const char of CHARS) {
          const drawn = drawnLetter(loaded.face, char, CAP_MM);
          const before = solveUnit(drawn, rules, 'hidden').bars;
          if (before.length === 0) continue;
          letters++;
          const mm = apart(solveUnit(change(drawn, move), rules, 'hidden').bars, before, move);
          worst = Math.max(worst, mm);
          if (mm > SAME_MM) off.push(`${id} ${char} ${rounded(mm)}`);
        }
      }
      const named = off.length > 0 ? `: ${off.slice(0, 12).join(', ')}` : `, at most ${rounded(worst)} mm off`;
      return { value: off.length, unit: `of ${letters} letters${named}`, ok: letters > 40 && off.length === 0 };
    },
  };
}

/** Farthest that a bar of either lies from its like in the other after the move; infinite when they differ in number. */
function apart(after: readonly Ends[], before: readonly Ends[], move: Move): number {
  if (after.length !== before.length) return Infinity;
  const gap = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y);
  return Math.max(
    0,
    ...before.map((bar) => {
      const [from, to] = [move(bar.from), move(bar.to)];
      return Math.min(
        ...after.map((b) =>
          Math.min(Math.max(gap(b.from, from), gap(b.to, to)), Math.max(gap(b.to, from), gap(b.from, to))),
        ),
      );
    }),
  );
}

type Ends = Pick<BuiltBar, 'from' | 'to'>;

function moved(regions: readonly Region[], move: Move): Region[] {
  return regions.map((r) => ({ outer: r.outer.map(move), holes: r.holes.map((h) => h.map(move)) }));
}

/** Turned back to their direction: a mirror reverses it. */
function mirrored(regions: readonly Region[], move: Move): Region[] {
  return moved(regions, move).map((r) => ({
    outer: [...r.outer].reverse(),
    holes: r.holes.map((h) => [...h].reverse()),
  }));
}

/** Regions and holes in another order, every ring begun elsewhere. */
function reordered(regions: readonly Region[]): Region[] {
  const later = (ring: Ring) => {
    const at = Math.floor(ring.length / 3);
    return [...ring.slice(at), ...ring.slice(0, at)];
  };
  return [...regions].reverse().map((r) => ({ outer: later(r.outer), holes: r.holes.map(later).reverse() }));
}

const ELEMENTS: readonly DesignElement[] = [
  ring('top', 'Perry & Old Oak', 'playfair-display-700', 0),
  ring('bottom', 'CASK 2086', 'stardos-stencil-400', 180),
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

function ring(id: string, text: string, face: string, middleDeg: number): DesignElement {
  const reads = middleDeg === 0 ? 'outward' : 'inward';
  return {
    kind: 'ringText',
    id,
    text,
    face,
    inner: 0.64,
    outer: 0.8,
    middleDeg,
    reads,
    tracking: 0.04,
    fit: 'natural',
  };
}

function turned(element: DesignElement, deg: number): DesignElement {
  if (element.kind === 'ringText') return { ...element, middleDeg: element.middleDeg + deg };
  return element.kind === 'lineText' ? { ...element, turnDeg: element.turnDeg + deg } : element;
}

async function plates(changes: readonly (readonly [readonly DesignElement[], Move])[]) {
  const { faces } = await loadFaces(designWith(ELEMENTS));
  const bridgesOf = (elements: readonly DesignElement[]) =>
    makePlate(designWith(elements), 'plate', faces, createStore(), BUILT_IN).bridges;
  const before = bridgesOf(ELEMENTS);
  let [off, worst, count] = [0, 0, 0];
  for (const [elements, move] of changes) {
    const after = bridgesOf(elements);
    count += before.length;
    if (after.length !== before.length) off += Math.abs(after.length - before.length);
    for (const bridge of before) {
      const mm = Math.min(...after.map((b) => apart([b], [bridge], move)));
      worst = Math.max(worst, mm);
      if (mm > SAME_MM) off++;
    }
  }
  return { value: off, unit: `of ${count} bridges, at most ${rounded(worst)} mm off`, ok: count > 20 && off === 0 };
}

function designWith(elements: readonly DesignElement[]): Design {
  return {
    ...emptyDesign(),
    plates: [{ id: 'plate', name: 'Plate', diameter: { mm: 400 }, quantity: 1 }],
    elements: [...elements],
  };
}
