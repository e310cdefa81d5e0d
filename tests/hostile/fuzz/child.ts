import { HOSTILE_INPUTS } from '../inputs.ts';
import { mutantsOf, surfaceNamed, troubleOf } from './run-mutants.ts';

// Reads inputs in a process of its own, so that a hang, a crash or a swollen memory is measured and ends nothing else:
// `child.ts inputs FROM` or `child.ts mutants SURFACE SEED COUNT FROM`. Tells before each which it is, and after it what
// became of it, the processor's time in ms and the greatest memory so far in MB.

const [what, ...args] = process.argv.slice(2);

/** Waits until it is sent: what comes next may never end. */
function tell(message: object): Promise<void> {
  return new Promise((sent) => process.send?.(message, () => sent()));
}

async function one(at: number, read: () => unknown): Promise<void> {
  await tell({ begin: at });
  const before = process.cpuUsage();
  let trouble: unknown;
  try {
    trouble = read();
  } catch (error) {
    trouble = { kind: 'crash', why: String(error) };
  }
  const { user, system } = process.cpuUsage(before);
  await tell({ end: at, trouble, ms: (user + system) / 1000, mb: process.resourceUsage().maxRSS / 1024 });
}

if (what === 'inputs') {
  for (let i = Number(args[0]); i < HOSTILE_INPUTS.length; i++) {
    const input = HOSTILE_INPUTS[i]!;
    await one(i, () => {
      const said = input.read();
      return said !== undefined && /^\S.{10,}[.?!]$/su.test(said) ? undefined : { kind: 'silent', why: said ?? '' };
    });
  }
} else {
  const [name = '', seed, count, from] = args;
  const surface = surfaceNamed(name);
  for (const [i, { bytes, original }] of mutantsOf(surface, Number(seed), Number(count)).entries())
    if (i >= Number(from)) await one(i, () => troubleOf(surface, bytes, original));
}
process.disconnect();
