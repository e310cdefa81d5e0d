import { union } from '../../../geometry/adapters/clipper.ts';
import { solveUnit } from '../../../geometry/bridges/solve-unit.ts';
import { hangsOfBars, metalOf } from '../../../geometry/bridges/stiffness.ts';
import { builtInMiddleMm, cantileverTip, cantileverTipSpread, guidedTipMm } from '../../outside/beam-formulas.ts';
import { type Beam, GROUND, groupsOf, motionUnder } from '../../../geometry/measure/grillage.ts';
import type { Ring } from '../../../geometry/shapes.ts';
import { stockRules } from '../../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { timeInTurns } from '../../bench/timing.ts';
import { type Claim, rounded } from '../claim.ts';
import { demoPlates } from '../main/demo-plates.ts';

/** What beam formulas say of the bridges, and the formulas themselves held against print. */
export const STRENGTH_CLAIMS: readonly Claim[] = [
  {
    // FOSSEE Scilab companion 3863, examples 13.1 and 13.6; Roark, Table 8.1 for the ratio. As printed: four digits.
    name: 'beam-worked-examples-greatest-error',
    wanted: 'at most 0.05, the last printed digit',
    measure() {
      const force = cantileverTip(25_000, 3000, 3000, 2.1e5 * 1e8);
      const spread = cantileverTipSpread(10, 1000, 3000, 2e5 * 1e8);
      const ratio = builtInMiddleMm(1, 1, 1) / cantileverTip(1, 1, 1, 1).mm;
      const pairs: readonly [number, number][] = [
        [force.mm, 10.71],
        [force.slopeRad, 0.005357],
        [spread.mm, 4.833],
        [spread.slopeRad, 0.002167],
        [ratio, 1 / 64],
      ];
      const worst = Math.max(...pairs.map(([ours, printed]) => 100 * Math.abs(ours / printed - 1)));
      return Promise.resolve({ value: rounded(worst), unit: '%', ok: worst <= 0.05 });
    },
  },
  {
    name: 'grillage-to-guided-beams-error',
    wanted: 'at most 1e-9: two opposite bridges are two beams of 12EI/L3',
    measure() {
      const section = { thicknessMm: 1.5, youngMPa: 200_000, shearMPa: 77_000 };
      const centre = { x: 3, y: -2 };
      const beams = [1, -1].map((side): Beam => ({
        a: 0,
        b: GROUND,
        from: { x: 3, y: -2 + side * 9 },
        to: { x: 3, y: -2 + side * 21 },
        widthMm: 2,
      }));
      const group = groupsOf([centre], beams, section)[0];
      const lift = (group && motionUnder(group, Float64Array.of(5, 0, 0))?.[0]) ?? NaN;
      const error = Math.abs(lift / guidedTipMm(2.5, 12, (200_000 * 2 * 1.5 ** 3) / 12) - 1);
      return Promise.resolve({ value: rounded(error), unit: '', ok: error <= 1e-9 });
    },
  },
  {
    name: 'demo-plates-softest-islands',
    wanted: 'each within its limit of one thickness or 1.5 mm under a touch of 5 N',
    async measure() {
      const plates = (await demoPlates()).map(({ design, plate }) => {
        const most = Math.max(0, ...plate.islands.map(({ hang }) => hang?.touchMm ?? Infinity));
        const limit = plate.rules.stiffness?.touchLimitMm ?? 0;
        return { text: `${rounded(most)} (${design.title}, ${plate.name})`, ok: most <= limit };
      });
      return { value: plates.map((p) => p.text).join(', '), unit: 'mm', ok: plates.every((p) => p.ok) };
    },
  },
  {
    name: 'demo-plates-greatest-sag',
    wanted: 'at most 0.3',
    async measure() {
      const plates = await demoPlates();
      const sags = plates.flatMap(({ plate }) => plate.islands.map(({ hang }) => hang?.sagMm ?? Infinity));
      const most = Math.max(...sags);
      return { value: rounded(most), unit: `mm over ${sags.length} islands`, ok: most <= 0.3 };
    },
  },
  {
    name: 'demo-plates-greatest-strain',
    wanted: 'at most 1: no touch bends a bridge for good',
    async measure() {
      const shares = (await demoPlates()).flatMap(({ plate }) =>
        plate.islands.map(({ hang }) => (hang?.rootMPa ?? Infinity) / (plate.rules.stiffness?.yieldMPa ?? NaN)),
      );
      const most = Math.max(...shares);
      return { value: rounded(most), unit: 'of the yield stress', ok: most <= 1 };
    },
  },
  {
    name: 'judging-stiffness-to-bridging',
    wanted: 'at most 0.05, in one run',
    timed: true,
    async measure() {
      const { rules } = stockRules(
        {
          material: 'stainless-304',
          process: 'fibre-laser',
          thicknessMm: 1.5,
          use: 'paint',
        },
        'auto',
        BUILT_IN,
      );
      const drawn = union([circle(30), circle(22).reverse()]);
      const { bars } = solveUnit(drawn, rules, 'hidden');
      const [judging = NaN, bridging = NaN] = await timeInTurns(5, [
        () => hangsOfBars(metalOf(drawn), bars, rules),
        () => solveUnit(drawn, rules, 'hidden'),
      ]);
      const ratio = judging / bridging;
      return { value: rounded(ratio), unit: 'times', ok: bars.length >= 2 && ratio <= 0.05 };
    },
  },
];

/** With as many corners as a flattened letter has. */
function circle(radius: number): Ring[number][] {
  return Array.from({ length: 240 }, (_, i) => {
    const a = (i * Math.PI) / 120;
    return { x: radius * Math.cos(a), y: radius * Math.sin(a) };
  });
}
