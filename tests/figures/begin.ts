import type { AnswerOutcome } from './begin/answered.ts';
import { initialsCases, nameCases } from './begin/cases.ts';
import { runAllAnswers } from './begin/run-answers.ts';
import { VISIT_CLAIMS } from './begin/visit-claims.ts';
import { once, rounded, type Claim } from './claim.ts';
import { wantedPart } from './part.ts';

const TEXTS = 1000;
const SEED = 1504;
const MOST_NAMED = 6;

const initials = once(() => runAllAnswers(initialsCases(), wantedPart()));

const named = (stopped: readonly AnswerOutcome[]): string =>
  stopped
    .slice(0, MOST_NAMED)
    .map(({ one, stops }) => `; ${one.beginning} ${one.letters} ${Object.values(one.answers).join(' | ')}: ${stops[0]}`)
    .join('');

/** Any answer to the questions of a beginning gives a plate that can be cut, and a slow phone gets there soon. */
export const claims: readonly Claim[] = [
  {
    name: 'initials',
    wanted: '0 that cannot be cut, of all 676 pairs in each beginning and lettering at both sizes',
    async measure() {
      const outcomes = await initials();
      const stopped = outcomes.filter(({ stops }) => stops.length > 0);
      return { value: stopped.length, unit: `of ${outcomes.length}${named(stopped)}`, ok: stopped.length === 0 };
    },
  },
  {
    name: 'initials-alike',
    wanted: 'at most 1 % between the heights of two initials',
    async measure() {
      const unlike = Math.max(...(await initials()).map((o) => o.unlike));
      return { value: rounded(unlike * 100), unit: '%', ok: unlike <= 0.01 };
    },
  },
  {
    name: 'names',
    wanted:
      '0 that cannot be cut up to 24 characters and 0 refused without a length or size that holds, of 1,000 names of 15 countries in fields of all beginnings',
    async measure() {
      const cases = nameCases(TEXTS, SEED);
      const longest = new Map(cases.map(({ one, longest: most }) => [JSON.stringify(one), most]));
      const outcomes = await runAllAnswers(
        cases.map(({ one }) => one),
        wantedPart(),
      );
      const stopped = outcomes.filter(({ stops }) => stops.length > 0);
      const short = stopped.filter(({ one }) => (longest.get(JSON.stringify(one)) ?? 0) <= 24);
      const untold = stopped.filter(({ told }) => !told).length;
      const rewritten = outcomes.filter((o) => o.rewritten).length;
      const rest = `of ${outcomes.length} designs; ${stopped.length - short.length} stopped beyond, ${untold} of all not told where they would hold, ${rewritten} with letters a face lacks written as offered`;
      return { value: short.length, unit: `${rest}${named([...short, ...stopped])}`, ok: short.length + untold === 0 };
    },
  },
  ...VISIT_CLAIMS,
];
