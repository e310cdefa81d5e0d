import { readdirSync } from 'node:fs';
import type { Claim } from './claim.ts';

// `npm run figures [-- GROUP[/CLAIM] ...] [--timed]`: measures and prints every claim, one line each; status 1 when one
// falls short. GROUP/CLAIM takes the claims whose names begin so. The long ones of begin take --part N/M. With --timed only those about speed: that is
// `npm run bench`.

const FRAME = ['run.ts', 'claim.ts', 'part.ts'];

const args = process.argv.slice(2);
const timedOnly = args.includes('--timed');
const groups = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith('.ts') && !FRAME.includes(name))
  .map((name) => name.replace('.ts', ''))
  .sort();
const wanted = args.filter((arg, i) => !arg.startsWith('--') && args[i - 1] !== '--part');
const unknown = wanted.find((name) => !groups.includes(groupOf(name)));
if (unknown !== undefined) {
  console.error(`There is no group ${groupOf(unknown)}; there are ${groups.join(', ')}.`);
  process.exit(1);
}

let [short, measured] = [0, 0];
for (const group of groups.filter((name) => wanted.length === 0 || wanted.some((w) => groupOf(w) === name))) {
  const { claims } = (await import(`./${group}.ts`)) as { claims: readonly Claim[] };
  for (const claim of claims) {
    if (!isWanted(group, claim)) continue;
    measured++;
    short += (await print(group, claim)) ? 0 : 1;
  }
}
if (measured === 0) console.error('No claim has such a name.');
process.exit(short > 0 || measured === 0 ? 1 : 0);

function groupOf(name: string): string {
  return name.split('/')[0] ?? name;
}

function isWanted(group: string, claim: Claim): boolean {
  if (timedOnly && !claim.timed) return false;
  return (
    wanted.length === 0 ||
    wanted.some((w) => w === group || (`${group}/${claim.name}`.startsWith(`${w}`) && w.includes('/')))
  );
}

async function print(group: string, claim: Claim): Promise<boolean> {
  try {
    const { value, unit, ok } = await claim.measure();
    const measured = unit ? `${value} ${unit}` : `${value}`;
    console.log(`${group}/${claim.name}: ${measured} (${claim.wanted})${ok ? '' : ' - FALLS SHORT'}`);
    return ok;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    console.log(`${group}/${claim.name}: could not be measured: ${why.split('\n')[0]} (${claim.wanted}) - FALLS SHORT`);
    return false;
  }
}
