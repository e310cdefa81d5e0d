import { loadFaces } from '../../../fonts/node-faces.ts';
import { solveUnit } from '../../../geometry/bridges/solve-unit.ts';
import type { DesignElement } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { turnPoint } from '../../../geometry/measure/clock.ts';
import type { Region } from '../../../geometry/shapes.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { stockRules } from '../../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import {
  designWith,
  ELEMENTS,
  mirrored,
  type Move,
  moved,
  offAfter,
  reordered,
  SAME_MM,
  turned,
} from '../../laws/moves.ts';
import { drawnLetter, faceOf } from '../../sweep/case.ts';
import { type Claim, rounded } from '../claim.ts';

const CAP_MM = 50;
const FACES = ['playfair-display-700', 'alfa-slab-one-400', 'oswald-700', 'stardos-stencil-400', 'uncial-antiqua-400'];
const CHARS = [...'ABDOPQRabdegopq04689&@%#'];

const { rules } = stockRules(
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  'auto',
  BUILT_IN,
);

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
        const face = await faceOf(id);
        for (const char of CHARS) {
          const drawn = drawnLetter(face, char, CAP_MM);
          const before = solveUnit(drawn, rules, 'hidden').bars;
          if (before.length === 0) continue;
          letters++;
          const after = solveUnit(change(drawn, move), rules, 'hidden').bars;
          const mm = after.length === before.length ? Math.max(...offAfter(after, before, move)) : Infinity;
          worst = Math.max(worst, mm);
          if (mm > SAME_MM) off.push(`${id} ${char} ${rounded(mm)}`);
        }
      }
      const named = off.length > 0 ? `: ${off.slice(0, 12).join(', ')}` : `, at most ${rounded(worst)} mm off`;
      return { value: off.length, unit: `of ${letters} letters${named}`, ok: letters > 40 && off.length === 0 };
    },
  };
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
    for (const mm of offAfter(after, before, move)) {
      worst = Math.max(worst, mm);
      if (mm > SAME_MM) off++;
    }
  }
  return { value: off, unit: `of ${count} bridges, at most ${rounded(worst)} mm off`, ok: count > 20 && off === 0 };
}
