import { readdirSync, readFileSync } from 'node:fs';
import { canonicalJson } from '../../../geometry/design/canonical-json.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import { packDesign } from '../../../web/handover/link/pack-design.ts';
import { readLink } from '../../../web/handover/link/read-link.ts';
import type { Claim } from '../claim.ts';

const MOST = 2000;
/** What stands before the fragment: a shop's own address. */
const ADDRESS = 'https://stencils.example/bridgehead/';
const DEMOS = new URL('../../../web/demo/', import.meta.url);

/** Designs as links. */
export const LINK_CLAIMS: readonly Claim[] = [
  {
    name: 'longest-link',
    wanted: `fewer than ${MOST} characters for every beginning without artwork, and back to the same design`,
    measure() {
      let [longest, changed] = [0, 0];
      for (const name of readdirSync(DEMOS).filter((file) => file.endsWith('.json'))) {
        const read = readDesign(readFileSync(new URL(name, DEMOS), 'utf8'));
        if (!('design' in read)) throw new Error(`${name}: ${read.problem}`);
        if (read.design.elements.some((element) => element.kind === 'artwork')) continue;
        const packed = packDesign(read.design);
        if ('problem' in packed) throw new Error(`${name} is too large for a link`);
        const length = ADDRESS.length + packed.fragment.length;
        console.log(`  ${String(length).padStart(6)}  ${name}`);
        longest = Math.max(longest, length);
        const back = readLink(packed.fragment);
        if (!('design' in back) || canonicalJson(back.design) !== canonicalJson(read.design)) changed++;
      }
      const unit = `characters${changed > 0 ? `, ${changed} came back changed` : ''}`;
      return Promise.resolve({ value: longest, unit, ok: longest > 0 && longest < MOST && changed === 0 });
    },
  },
];
