import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { approve } from '../../geometry/approval/approve.ts';
import { standingOf } from '../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { approvalBack, type OwnParts } from '../../web/handover/link/approval-back.ts';
import type { Change } from '../../web/state/change.ts';

const read = readDesign(readFileSync('web/demo/golden-wedding.json', 'utf8'));
if ('problem' in read) throw new Error(read.problem);
const wedding = read.design;

/** A browser in which one design is open, and that keeps no other. */
function browserWith(open: Design): { readonly parts: OwnParts; readonly now: () => Design } {
  let present = open;
  const parts = {
    own: { open: () => Promise.resolve(undefined), flush: () => Promise.resolve() },
    list: { refresh: () => Promise.resolve(), textOf: () => Promise.resolve(undefined) },
    saving: { getState: () => ({ openId: 'it', cards: [] }) },
    design: {
      getState: () => ({
        history: { present },
        apply: ({ design }: Change) => {
          present = design;
        },
      }),
    },
  };
  return { parts: parts as unknown as OwnParts, now: () => present };
}

const asked = { name: 'Beata', at: '2027-05-03T09:30:00.000Z', how: 'link' } as const;
const approved = approve(wedding, { ...asked, fingerprint: fingerprintOf(wedding) });

describe('a link with an approval on it', () => {
  it('asks first, and then puts it on the own design that was approved', async () => {
    const { parts, now } = browserWith(wedding);
    const cameBack = await approvalBack(approved, parts, BUILT_IN);
    expect(cameBack).toMatchObject({ name: 'Beata', at: asked.at, title: wedding.title, changedSince: false });
    expect(now(), 'nothing is put on a design before somebody says so').toBe(wedding);
    expect(await cameBack?.take()).toContain('Beata');
    expect(standingOf(now(), fingerprintOf(now())).kind).toBe('approved');
  });

  it('approves nothing when it carries a design that was changed after it was approved', async () => {
    const { parts, now } = browserWith(wedding);
    const changed = { ...approved, elements: approved.elements.slice(1) };
    expect(await approvalBack(changed, parts, BUILT_IN)).toBeUndefined();
    expect(now()).toBe(wedding);
  });

  it('approves nothing when its approval is of the own design and the design it carries is another', async () => {
    const other = { ...wedding, elements: wedding.elements.slice(1) };
    const { parts, now } = browserWith(other);
    const forged = { ...approved, approval: { ...asked, fingerprint: fingerprintOf(other).slice(0, 8) } };
    expect(await approvalBack(forged, parts, BUILT_IN)).toBeUndefined();
    expect(now()).toBe(other);
  });
});
