import { loadFaces } from '../../../fonts/node-faces.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { emptyDesign, newRingText } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { timeInTurns } from '../../bench/timing.ts';
import { type Claim, once, rounded } from '../claim.ts';
import { demoDesigns } from './demo-plates.ts';

const ROUNDS = 5;

export const SPEED_CLAIMS: readonly Claim[] = [
  {
    name: 'keystroke-with-glyph-store-to-without',
    wanted: 'below 1, in one run',
    timed: true,
    async measure() {
      const design = demoDesigns().find(({ elements }) => elements.some(({ kind }) => kind !== 'border'));
      if (!design) throw new Error('no demo design has a text');
      const { faces } = await loadFaces(design);
      const kept = createStore();
      let [withStore, without] = [0, 0];
      const plateId = design.plates[0]?.id ?? '';
      const [kept_ = NaN, fresh = NaN] = await timeInTurns(ROUNDS, [
        () => makePlate(typed(design, withStore++), plateId, faces, kept, BUILT_IN),
        () => makePlate(typed(design, without++), plateId, faces, createStore(), BUILT_IN),
      ]);
      const ratio = kept_ / fresh;
      return { value: rounded(ratio), unit: 'times', ok: ratio < 1 };
    },
  },
  growthClaim('growth-from-10-to-40-glyphs', 0),
  growthClaim('growth-from-40-to-160-glyphs', 1),
];

function growthClaim(name: string, step: 0 | 1): Claim {
  return {
    name,
    wanted: 'at most 8 (in step with the glyphs: 4)',
    timed: true,
    async measure() {
      const times = await growthTimes();
      const ratio = (times[step + 1] ?? NaN) / (times[step] ?? NaN);
      return { value: rounded(ratio), unit: 'times', ok: ratio <= 8 };
    },
  };
}

const growthTimes = once(async () => {
  const designs = [10, 40, 160].map(withGlyphs);
  const { faces } = await loadFaces(designs[2] ?? emptyDesign());
  return timeInTurns(
    3,
    designs.map((design) => () => makePlate(design, 'large', faces, createStore(), BUILT_IN)),
  );
});

/** The design with another last letter in its first text: what one keystroke changes. */
function typed(design: Design, stroke: number): Design {
  const letter = 'AEORBDPQ'[stroke % 8] ?? 'A';
  const at = design.elements.findIndex(({ kind }) => kind !== 'border');
  return {
    ...design,
    elements: design.elements.map((element, i) =>
      i === at && 'text' in element ? { ...element, text: `${element.text.slice(0, -1)}${letter}` } : element,
    ),
  };
}

/** A head with so many letters, 40 a ring, all different work as far as the alphabet goes. */
function withGlyphs(count: number): Design {
  const rings = Math.ceil(count / 40);
  return {
    ...emptyDesign(),
    elements: Array.from({ length: rings }, (_, ring) => ({
      ...newRingText(`ring-${ring}`, 'playfair-display-700'),
      text: Array.from({ length: Math.min(40, count) }, (_, i) => String.fromCharCode(65 + ((i + ring) % 26))).join(''),
      inner: 0.86 - 0.12 * ring,
      outer: 0.93 - 0.12 * ring,
      tracking: 0,
    })),
  };
}
