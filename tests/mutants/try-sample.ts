import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { seeded } from '../judge/seeded.ts';
import type { Host } from './ask-host.ts';
import { type Mutant, mutantsOf } from './changes.ts';
import { CACHE, Reach } from './reach.ts';
import { hashOf, mutatedFiles, textOf } from './sources.ts';

export const SEED = 20_261_201;

/** Work that one mutant's tests may cost by themselves, in ms of the processor; dearer tests are not asked. */
const BUDGET_MS = 60_000;

interface Wish {
  readonly tell: (line: string) => void;
  /** Only files with this in their path are changed. */
  readonly within?: string;
  /** Only tests with this in their path are asked. */
  readonly by?: string;
}

/** Survivors shown to change nothing, by their file, line of code and change. */
interface Harmless {
  readonly file: string;
  /** The whole line, so that it is found again when lines above it change. */
  readonly code: string;
  readonly change: string;
  readonly why: string;
}

interface Result {
  readonly key: string;
  readonly noticed: boolean;
  readonly outOfWork?: boolean;
  readonly by?: string;
  readonly asked: number;
}

export interface Found {
  readonly tried: number;
  readonly noticed: number;
  readonly outOfWork: number;
  readonly harmless: number;
  readonly survivors: readonly { readonly mutant: Mutant; readonly why?: string }[];
}

/** Tries a seeded sample; results of earlier runs are taken where neither the file nor its tests changed. */
export async function trySample(
  host: Host,
  share: number,
  seed: number,
  { tell, within = '', by = '' }: Wish,
): Promise<Found> {
  mkdirSync(CACHE, { recursive: true });
  const reach = new Reach();
  await reach.bringUpToDate(host, by, tell);
  const all = mutatedFiles()
    .filter((file) => file.includes(within))
    .flatMap((file) => mutantsOf(file, textOf(file)));
  const sample = pick(all, share <= 1 ? Math.round(share * all.length) : share, seed);
  const kept = join(CACHE, 'results.jsonl');
  const known = readResults(kept);
  const results: { readonly mutant: Mutant; readonly result: Result }[] = [];
  for (const [i, mutant] of sample.entries()) {
    const tests = reach.testsOf(mutant, by, BUDGET_MS);
    const key = [
      ...[mutant.file, hashOf(mutant.file), mutant.start, mutant.becomes],
      ...tests.map(({ path }) => hashOf(path)),
    ].join(' ');
    let result = known.get(key);
    if (!result) {
      const came = tests.length === 0 ? { costMs: 0 } : await host.ask({ mutant, tests });
      const outOfWork = came === 'out of work';
      const by = outOfWork ? undefined : came.failed;
      const message = outOfWork ? undefined : came.message;
      const noticed = outOfWork || by !== undefined;
      result = { key, noticed, asked: tests.length, ...(outOfWork && { outOfWork }), ...(by !== undefined && { by }) };
      appendFileSync(kept, `${JSON.stringify({ ...result, message })}\n`);
    }
    results.push({ mutant, result });
    const { file, line, was, becomes } = mutant;
    const end = result.outOfWork ? 'out of work' : (result.by ?? `NOT NOTICED by ${result.asked} tests`);
    tell(`${i + 1} of ${sample.length}: ${file}:${line} ${was} -> ${becomes}: ${end}`);
  }
  return sumUp(results);
}

/** So many of all without one twice, in an order that a longer sample begins with too. */
function pick(all: readonly Mutant[], count: number, seed: number): readonly Mutant[] {
  const chance = seeded(seed);
  const rest = [...all];
  const picked: Mutant[] = [];
  while (picked.length < count && rest.length > 0) {
    const i = chance.whole(0, rest.length - 1);
    picked.push(rest[i]!);
    rest[i] = rest.at(-1)!;
    rest.pop();
  }
  return picked;
}

function sumUp(results: readonly { readonly mutant: Mutant; readonly result: Result }[]): Found {
  const survivors = results.filter(({ result }) => !result.noticed).map(({ mutant }) => withWhy(mutant));
  const harmless = survivors.filter(({ why }) => why !== undefined).length;
  return {
    tried: results.length - harmless,
    noticed: results.filter(({ result }) => result.noticed).length,
    outOfWork: results.filter(({ result }) => result.outOfWork).length,
    harmless,
    survivors,
  };
}

function withWhy(mutant: Mutant): { mutant: Mutant; why?: string } {
  const list = JSON.parse(textOf('tests/mutants/harmless.json')) as readonly Harmless[];
  const code = textOf(mutant.file).split('\n')[mutant.line - 1]!.trim();
  const change = `${mutant.was} -> ${mutant.becomes}`;
  const why = list.find((h) => h.file === mutant.file && h.code === code && h.change === change)?.why;
  return { mutant, ...(why !== undefined && { why }) };
}

function readResults(file: string): Map<string, Result> {
  if (!existsSync(file)) return new Map();
  const lines = readFileSync(file, 'utf8').split('\n').filter(Boolean);
  return new Map(lines.map((line) => JSON.parse(line) as Result).map((result) => [result.key, result]));
}
