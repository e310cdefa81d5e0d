import { judgeDrawing, type SweepResult } from '../../sweep/case.ts';
import { joinedWords, nestedDrawings } from '../../sweep/drawings.ts';
import { caseName, runCases, sampleCases } from '../../sweep/run-cases.ts';
import type { Claim, Measured } from '../claim.ts';

const CASES = 1500;
const DRAWINGS = 60;
const SEED = 2086;
const MOST_NAMED = 12;

/** What came of each thing judged, by its name. */
class Tally {
  private readonly counts = { held: 0, told: 0, silent: 0 };
  private readonly silent: string[] = [];

  add(name: string, { outcome, fault }: Pick<SweepResult, 'outcome' | 'fault'>): void {
    this.counts[outcome]++;
    if (outcome === 'silent') this.silent.push(`${name}: ${fault?.why ?? ''}`);
  }

  measured(things: string): Measured {
    const { held, told, silent } = this.counts;
    const all = held + told + silent;
    const named = this.silent.slice(0, MOST_NAMED).join('; ');
    return {
      value: silent,
      unit: `of ${all} ${things}, ${held} held, ${told} told${named ? `: ${named}` : ''}`,
      // A maker that tells of everything would never be silent.
      ok: silent === 0 && held > all / 2,
    };
  }
}

/** Seeded shares of the full sweep, which `npm run -s sweep` does, and of drawings of many parts. */
export const SWEEP_CLAIMS: readonly Claim[] = [
  {
    name: 'sweep-failing-in-silence',
    wanted: '0: each letter holds by the judgement of JTS, or it is told why not',
    async measure() {
      const tally = new Tally();
      await runCases(await sampleCases(CASES, SEED), 2, 'hidden', (batch) => {
        for (const outcome of batch) tally.add(caseName(outcome.one), outcome);
      });
      return tally.measured('letters');
    },
  },
  {
    name: 'joined-and-nested-failing-in-silence',
    wanted:
      '0: words of joining faces, and letters in frames in frames, hold by the judgement of JTS, or it is told why not',
    async measure() {
      const tally = new Tally();
      for (const d of [...(await joinedWords(DRAWINGS, SEED)), ...(await nestedDrawings(DRAWINGS, SEED))]) {
        tally.add(d.name, judgeDrawing(d.drawn, d.stock, d.manner));
      }
      return tally.measured('drawings in all manners');
    },
  },
];
