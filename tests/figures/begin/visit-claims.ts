import type { Claim, Measured } from '../claim.ts';
import { NO_BROWSER } from '../page/serve-page.ts';
import { firstVisits, type Visit } from './first-visit.ts';

const ON = 'on a processor 4 times slower and a line of 1.6 Mbit/s, 150 ms';

/** The middle of the visits, which one busy moment of the machine does not move. */
async function middle(name: string, ms: (visit: Visit) => number, most: number): Promise<Measured> {
  const found = await firstVisits();
  if (!found) return NO_BROWSER;
  const all = found.visits.map(ms).sort((a, b) => a - b);
  const value = Math.round(all[Math.floor(all.length / 2)] ?? NaN);
  const rest = `visits: ${all.map(Math.round).join(', ')}; machine's load ${found.load.toFixed(1)}`;
  return { value, unit: `ms (${name}; ${rest})`, ok: value <= most };
}

const worstKey = ({ keysMs }: Visit): number => Math.max(...keysMs.map(({ ms }) => ms));

/** A first visit without any cache; the worker runs at this machine's own speed. */
export const VISIT_CLAIMS: readonly Claim[] = [
  {
    name: 'first-picture',
    wanted: `at most 3000 ms ${ON}`,
    timed: true,
    measure: () => middle('first beginning painted', (v) => v.firstPictureMs, 3000),
  },
  {
    name: 'all-pictures',
    wanted: `at most 4000 ms ${ON}`,
    timed: true,
    measure: () => middle('all beginnings painted', (v) => v.allPicturesMs, 4000),
  },
  {
    name: 'ready',
    wanted: `at most 5000 ms ${ON}`,
    timed: true,
    measure: () => middle('a beginning pressed when seen, its field has taken a letter', (v) => v.readyMs, 5000),
  },
  {
    name: 'keystroke',
    wanted: 'at most 200 ms from each key to the next paint (Event Timing) on a processor 4 times slower',
    timed: true,
    async measure() {
      const found = await firstVisits();
      if (found) for (const { beginning, ms } of found.visits[0]?.keysMs ?? []) console.log(`  ${ms} ms  ${beginning}`);
      return middle('slowest key of all beginnings', worstKey, 200);
    },
  },
];
