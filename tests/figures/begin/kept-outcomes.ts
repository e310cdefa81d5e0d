import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AnswerCase, AnswerOutcome } from './answered.ts';

const ROOT = join(import.meta.dirname, '../../..');
const FOLDER = join(ROOT, 'node_modules/.cache/begin-answers');

/** All that an outcome hangs on. */
const SOURCES = ['geometry', 'fonts', 'web/demo', 'web/design/beginnings', 'web/state', 'tests/figures/begin'];
const PACKAGES = 'package-lock.json';

export interface KeptOutcomes {
  get(one: AnswerCase): AnswerOutcome | undefined;
  add(outcomes: readonly AnswerOutcome[]): void;
}

/**
 * Outcomes of these very sources, so that a run of an hour can be made in parts and go on after an interruption.
 * A changed byte of the sources is another file: a figure is never made of what other sources gave.
 */
export function keptOutcomes(): KeptOutcomes {
  mkdirSync(FOLDER, { recursive: true });
  const file = join(FOLDER, `${sourcesHash()}.ndjson`);
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : [];
  const known = new Map<string, AnswerOutcome>();
  for (const line of lines) {
    const outcome = JSON.parse(line) as AnswerOutcome;
    known.set(JSON.stringify(outcome.one), outcome);
  }
  return {
    get: (one) => known.get(JSON.stringify(one)),
    add(outcomes) {
      for (const outcome of outcomes) known.set(JSON.stringify(outcome.one), outcome);
      appendFileSync(file, outcomes.map((outcome) => `${JSON.stringify(outcome)}\n`).join(''));
    },
  };
}

function sourcesHash(): string {
  const hash = createHash('sha256').update(readFileSync(join(ROOT, PACKAGES)));
  for (const folder of SOURCES) {
    for (const name of readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).sort()) {
      if (/\.(?:tsx?|json)$/u.test(name)) hash.update(name).update(readFileSync(join(ROOT, folder, name)));
    }
  }
  return hash.digest('hex').slice(0, 16);
}
