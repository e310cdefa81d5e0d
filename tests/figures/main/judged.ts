import { loadFaces } from '../../../fonts/node-faces.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { planCuts } from '../../../geometry/cutplan/plate/plan-cuts.ts';
import { writeDxf } from '../../../geometry/files/dxf/dxf.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { judgeDxf, type Judgement } from '../../judge/judge-dxf.ts';
import { randomDesign } from '../../judge/random-design.ts';
import { type Claim, once } from '../claim.ts';
import { demoPlates } from './demo-plates.ts';

const SEEDS = 60;

/** What another library finds in the written files: one piece of metal, also when shrunk; or a finding that says why not. */
export const JUDGED_CLAIMS: readonly Claim[] = [
  {
    name: 'demo-plates-failing-in-silence',
    wanted: '0, and none refused',
    async measure() {
      const judged = (await demoPlates()).map(({ design, plate, dxf }) => judge(design.title, plate, dxf));
      const { silent, refused, unit } = summed(judged);
      return { value: silent, unit, ok: judged.length > 0 && silent === 0 && refused === 0 };
    },
  },
  {
    name: 'random-plates-failing-in-silence',
    wanted: '0',
    async measure() {
      const judged = await judgedRandom();
      const { silent, unit } = summed(judged);
      return { value: silent, unit, ok: judged.length === SEEDS && silent === 0 };
    },
  },
  {
    // A chain that refuses everything would fail nothing in silence.
    name: 'random-plates-held',
    wanted: 'at least a third',
    async measure() {
      const held = (await judgedRandom()).filter(({ outcome }) => outcome === 'held').length;
      return { value: held, unit: `of ${SEEDS} plates`, ok: held >= SEEDS / 3 };
    },
  },
];

interface Judged {
  readonly name: string;
  readonly outcome: 'held' | 'refused' | 'silent';
}

const judgedRandom = once(async () => {
  const judged: Judged[] = [];
  for (let seed = 1; seed <= SEEDS; seed++) {
    const design = randomDesign(seed);
    const { faces } = await loadFaces(design);
    const plate = makePlate(design, 'plate', faces, createStore(), BUILT_IN);
    judged.push(judge(`seed ${seed}`, plate, writeDxf(design, plate, planCuts(plate))));
  }
  return judged;
});

function judge(name: string, plate: PlateResult, dxf: string): Judged {
  if (plate.verdict === 'stop') {
    const said = plate.findings.some(({ severity, sentence }) => severity === 'stop' && sentence.length > 0);
    return { name, outcome: said ? 'refused' : 'silent' };
  }
  const { pieces, shrunkPieces }: Judgement = judgeDxf(dxf, plate.rules.leastBridgeMm);
  return { name: `${name}, ${plate.name}`, outcome: pieces === 1 && shrunkPieces === 1 ? 'held' : 'silent' };
}

function summed(judged: readonly Judged[]): { silent: number; refused: number; unit: string } {
  const silent = judged.filter(({ outcome }) => outcome === 'silent');
  const refused = judged.filter(({ outcome }) => outcome === 'refused').length;
  const held = judged.length - silent.length - refused;
  const names = silent.length > 0 ? `: ${silent.map(({ name }) => name).join('; ')}` : '';
  return {
    silent: silent.length,
    refused,
    unit: `of ${judged.length} plates (${held} held, ${refused} refused with the reason)${names}`,
  };
}
