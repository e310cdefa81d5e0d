import { fork, type ChildProcess } from 'node:child_process';
import { once as event } from 'node:events';
import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { seeded, type Seeded } from '../../judge/seeded.ts';
import { ODD_REQUESTS, oddFolder, SECRET, send } from '../../web/serve/odd-requests.ts';
import type { Claim } from '../claim.ts';

const REQUESTS = 10_000;
const AT_ONCE = 40;
const SLOW = 200;
/** A connection that was ended before this has its answer, if only that there is none. */
const LATE_MS = 4000;
const SEED = 20_270_501;
/** Requests before the first look at the memory: what is made once is then made. */
const WARM_UP = 2000;
/** What a heap of 10,000 kept requests would exceed, at 1 kB each; and how far a process breathes. */
const MOST_HEAP_MB = 4;
const MOST_RSS_MB = 40;

interface Memory {
  readonly heapUsed: number;
  readonly rss: number;
}

interface Answers {
  readonly answered: number;
  /** Those of them that got a status. */
  readonly told: number;
  readonly leaked: number;
}

/** The server before requests that no browser sends; loopback only, in a process of its own. */
export const SERVER_CLAIMS: readonly Claim[] = [
  {
    name: 'server',
    wanted: `${REQUESTS} odd requests and ${SLOW} slow connections: all answered, alive, heap +${MOST_HEAP_MB} MB and memory +${MOST_RSS_MB} MB at most`,
    async measure() {
      const folder = oddFolder();
      const child = fork(fileURLToPath(new URL('./server-child.ts', import.meta.url)), [folder], {
        execArgv: ['--import', 'tsx', '--expose-gc'],
      });
      try {
        const [{ port }] = (await event(child, 'message')) as [{ port: number }];
        await askAll(port, WARM_UP, SEED + 1);
        const before = await memoryOf(child);
        const { answered, told, leaked } = await askAll(port, REQUESTS, SEED);
        const { served, ended } = await holdSlowly(port);
        const after = await memoryOf(child);
        const alive = child.exitCode === null && (await isServed(port));
        const heap = megabytes(after.heapUsed - before.heapUsed);
        const rss = megabytes(after.rss - before.rss);
        console.log(`  ${told} with a status, ${answered - told} by the end of the connection`);
        console.log(`  heap ${megabytes(before.heapUsed)} MB before, ${megabytes(after.heapUsed)} MB after`);
        console.log(`  memory of the process ${megabytes(before.rss)} MB before, ${megabytes(after.rss)} MB after`);
        console.log(`  while ${SLOW} callers were slow: others served ${served}, slow ones ended ${ended}`);
        return {
          value: `${answered} answered, ${leaked} secrets, ${alive ? 'alive' : 'dead'}, heap ${heap} MB, memory ${rss} MB more`,
          unit: '',
          ok:
            alive &&
            answered === REQUESTS &&
            leaked === 0 &&
            served &&
            ended === SLOW &&
            heap <= MOST_HEAP_MB &&
            rss <= MOST_RSS_MB,
        };
      } finally {
        child.kill();
        rmSync(dirname(folder), { recursive: true });
      }
    },
  },
];

/** Odd requests of the table, half of them with a few bytes changed. Answered: an HTTP status, or the end of the line. */
async function askAll(port: number, count: number, seed: number): Promise<Answers> {
  const random = seeded(seed);
  const requests = Array.from({ length: count }, (_, i) => {
    const { sent } = ODD_REQUESTS[i % ODD_REQUESTS.length]!;
    return i % 2 === 0 ? sent : mutated(sent, random);
  });
  let [answered, told, leaked] = [0, 0, 0];
  const ask = async (): Promise<void> => {
    for (let sent = requests.pop(); sent !== undefined; sent = requests.pop()) {
      // Half a request ends with its caller, who closes that side.
      const begun = Date.now();
      const { status, came } = await send(port, sent, { hangUp: true });
      if (status > 0 || Date.now() - begun < LATE_MS) answered++;
      if (status > 0) told++;
      if (came.includes(SECRET)) leaked++;
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, ask));
  return { answered, told, leaked };
}

function mutated(text: string, random: Seeded): string {
  const signs = [...text];
  for (let change = 0; change < 4; change++) {
    const sign = String.fromCharCode(random.whole(0, 255));
    // One taken for one put in, one taken, or one put in.
    signs.splice(random.whole(0, signs.length), random.whole(0, 1), ...random.pick([[sign], []]));
  }
  return signs.join('');
}

/** Callers who send half a head and no more; others must be served meanwhile, and the slow ones ended. */
async function holdSlowly(port: number): Promise<{ served: boolean; ended: number }> {
  const slow = Array.from({ length: SLOW }, () => send(port, 'GET / HTTP/1.1\r\nHost: loc', { patienceMs: 20_000 }));
  const served = await isServed(port);
  const ended = (await Promise.all(slow)).filter(({ status }) => status === 408).length;
  return { served, ended };
}

async function isServed(port: number): Promise<boolean> {
  return (await send(port, 'GET / HTTP/1.0\r\nHost: localhost\r\n\r\n')).status === 200;
}

async function memoryOf(child: ChildProcess): Promise<Memory> {
  child.send('memory');
  const [memory] = (await event(child, 'message')) as [Memory];
  return memory;
}

function megabytes(bytes: number): number {
  return Math.round(bytes / 1e5) / 10;
}
