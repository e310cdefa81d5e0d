import { loadFaces } from '../../../fonts/node-faces.ts';
import { emptyDesign, newLineText } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { timeInTurns } from '../../bench/timing.ts';
import { type Claim, once, rounded } from '../claim.ts';
import { demoDesigns } from '../main/demo-plates.ts';
import { bridgeWhole, clipWithClipper2, clipWithClipperLib, loadClipper2, placedRings } from './whole-plate.ts';

const ROUNDS = 7;
/** A keystroke in the midst of typing: so many were done before, and as often the same work in wasm. */
const WARM_UP = 8;
const LEAST_FASTER = 20;
/** In step with the glyphs it would be 16; a fifth more is allowed. */
const [FEW, MANY, SPARE] = [20, 320, 1.2];

/** A letter changed on a plate whose other letters are kept, against doing the whole plate; all in one run. */
export const SPEED_CLAIMS: readonly Claim[] = [
  {
    name: 'keystroke-against-plain-whole-plate-chain',
    wanted: `at least ${LEAST_FASTER} times faster`,
    timed: true,
    async measure() {
      const { keystroke, whole, noStore, glyphs } = await times();
      const ratio = whole / keystroke;
      return {
        value: rounded(ratio),
        unit: `times faster with ${glyphs} glyphs, ${rounded(keystroke)} ms a keystroke (${rounded(noStore / keystroke)} times against glyph by glyph without a store)`,
        ok: ratio >= LEAST_FASTER,
      };
    },
  },
  {
    name: 'keystroke-against-clipper2-wasm-whole-plate',
    wanted: 'at least 1: the whole keystroke as fast as the booleans and offsets alone',
    timed: true,
    async measure() {
      const { keystroke, wasm, plain } = await times();
      const ratio = wasm / keystroke;
      return {
        value: rounded(ratio),
        unit: `times as fast (clipper-lib: ${rounded(plain / keystroke)})`,
        ok: ratio >= 1,
      };
    },
  },
  {
    name: `growth-from-${FEW}-to-${MANY}-glyphs`,
    wanted: `at most ${(SPARE * MANY) / FEW} (in step with the glyphs: ${MANY / FEW})`,
    timed: true,
    async measure() {
      const [few = NaN, many = NaN] = await growth();
      const ratio = many / few;
      return {
        value: rounded(ratio),
        unit: 'times, nothing kept, no two lines of a size',
        ok: ratio <= (SPARE * MANY) / FEW,
      };
    },
  },
  {
    name: `keystroke-growth-from-${FEW}-to-${MANY}-glyphs`,
    wanted: `at most ${(SPARE * MANY) / FEW}`,
    timed: true,
    async measure() {
      const [, , few = NaN, many = NaN] = await growth();
      return { value: rounded(many / few), unit: 'times', ok: many / few <= (SPARE * MANY) / FEW };
    },
  },
];

const times = once(async () => {
  const demo = demoDesigns().find(({ title }) => title === "Maker's head");
  if (!demo) throw new Error("there is no demo design Maker's head");
  // Its lettering alone: united as one drawing, the rope at the rim takes longer than all letters, and flatters us.
  const design = { ...demo, elements: demo.elements.filter((e) => 'text' in e) };
  const plateId = design.plates[0]?.id ?? '';
  const { faces } = await loadFaces(design);
  const kept = createStore();
  const plate = makePlate(design, plateId, faces, kept, BUILT_IN);
  const rings = placedRings(plate);
  const wasm = await loadClipper2();
  const [a, b] = [clipWithClipperLib(plate, rings), clipWithClipper2(wasm, plate, rings)];
  if (!(Math.abs(a / b - 1) < 1e-4)) throw new Error(`the libraries disagree: ${a} and ${b} mm2`);
  let [stroke, other] = [0, 0];
  const press = () => makePlate(typed(design, stroke++), plateId, faces, kept, BUILT_IN);
  const clip = () => clipWithClipper2(wasm, plate, placedRings(plate));
  await timeInTurns(WARM_UP - 1, [press, clip]);
  const [keystroke = NaN, noStore = NaN, whole = NaN, inWasm = NaN, plain = NaN] = await timeInTurns(ROUNDS, [
    press,
    () => makePlate(typed(design, other++), plateId, faces, createStore(), BUILT_IN),
    () => bridgeWhole(plate),
    clip,
    () => clipWithClipperLib(plate, placedRings(plate)),
  ]);
  const glyphs = design.elements.reduce((sum, e) => sum + ('text' in e ? e.text.replaceAll(' ', '').length : 0), 0);
  return { keystroke, noStore, whole, wasm: inWasm, plain, glyphs };
});

const growth = once(async () => {
  const [few, many] = [withGlyphs(FEW), withGlyphs(MANY)];
  const { faces } = await loadFaces(many);
  const stores = [createStore(), createStore()] as const;
  let [a, b] = [0, 0];
  return timeInTurns(3, [
    () => makePlate(few, 'large', faces, createStore(), BUILT_IN),
    () => makePlate(many, 'large', faces, createStore(), BUILT_IN),
    () => makePlate(typed(few, a++), 'large', faces, stores[0], BUILT_IN),
    () => makePlate(typed(many, b++), 'large', faces, stores[1], BUILT_IN),
  ]);
});

/** The design with a last letter in its first text that it had nowhere before: each keystroke has a letter to solve. */
function typed(design: Design, stroke: number): Design {
  const at = design.elements.findIndex((e) => 'text' in e);
  const used = design.elements.map((e) => ('text' in e ? e.text : '')).join('');
  const fresh = [...'BQbdeghpqsaxuzyVWvJHjGnktfrc'].filter((c) => !used.includes(c));
  const letter = fresh[stroke];
  if (letter === undefined) throw new Error(`no ${stroke + 1} letters that the design does not have already`);
  return {
    ...design,
    elements: design.elements.map((e, i) =>
      i === at && 'text' in e ? { ...e, text: e.text.slice(0, -1) + letter } : e,
    ),
  };
}

const ON_A_LINE = 20;

/** So many glyphs in lines of twenty, each line a little larger than the last, so that no two letters are one work. */
function withGlyphs(count: number): Design {
  const design = emptyDesign();
  const letters = [...'ABDOPQRabdegopq04689'];
  return {
    ...design,
    head: { ...design.head, source: { kind: 'measured', alongMm: 1440, acrossMm: 1440 } },
    plates: [{ id: 'large', name: 'Large', diameter: { mm: 1400 }, quantity: 1 }],
    elements: Array.from({ length: count / ON_A_LINE }, (_, line) => ({
      ...newLineText(`line-${line}`, 'playfair-display-700'),
      text: letters.map((_l, i) => letters[(i + 7 * line) % ON_A_LINE]).join(''),
      x: 0,
      y: 0.085 * (7.5 - line),
      capHeight: 0.034 + 0.0003 * line,
      tracking: 0.05,
    })),
  };
}
