import { readdirSync, readFileSync } from 'node:fs';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';

/** All designs that ship, by the name of their file. */
export const DEMOS: readonly (readonly [name: string, design: Design])[] = readdirSync('web/demo')
  .filter((f) => f.endsWith('.json'))
  .map((f) => {
    const read = readDesign(readFileSync(`web/demo/${f}`, 'utf8'));
    if ('problem' in read) throw new Error(read.problem);
    return [f, read.design];
  });

export function demo(name: string): Design {
  const found = DEMOS.find(([f]) => f === `${name}.json`);
  if (!found) throw new Error(`no demo ${name}`);
  return found[1];
}
