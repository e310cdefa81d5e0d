import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { approve } from '../../geometry/approval/approve.ts';
import { chooseOption } from '../../geometry/approval/options.ts';
import { isAllApproved, standingOf } from '../../geometry/approval/standing.ts';
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
function browserWith(
  open: Design,
  whose: 'mine' | 'elsewhere' = 'mine',
): { readonly parts: OwnParts; readonly now: () => Design; readonly tab: () => string } {
  let present = open;
  let tab = whose;
  const parts = {
    own: {
      open: () => Promise.resolve(undefined),
      flush: () => Promise.resolve(),
      takeOver: () => Promise.resolve(void (tab = 'mine')),
    },
    list: { refresh: () => Promise.resolve(), textOf: () => Promise.resolve(undefined) },
    saving: { getState: () => ({ openId: 'it', cards: [], tab }) },
    design: {
      getState: () => ({
        history: { present },
        apply: ({ design }: Change) => {
          present = design;
        },
      }),
    },
  };
  return { parts: parts as unknown as OwnParts, now: () => present, tab: () => tab };
}

const asked = { name: 'Beata', at: '2027-05-03T09:30:00.000Z', how: 'link' } as const;
const approved = approve(wedding, { ...asked, fingerprint: fingerprintOf(wedding) });

describe('a link with an approval on it', () => {
  it('asks first, and then puts it on the own design that was approved', async () => {
    const { parts, now } = browserWith(wedding);
    const cameBack = await approvalBack(approved, parts, BUILT_IN);
    expect(cameBack).toMatchObject({ name: 'Beata', at: asked.at, title: wedding.title, changedSince: false });
    expect(now(), 'nothing is put on a design before somebody says so').toBe(wedding);
    expect(await cameBack?.take(false)).toContain('Beata');
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

  it('of an option makes it the design, approved, and keeps what was there', async () => {
    const [first] = wedding.plates;
    const own: Design = {
      ...wedding,
      options: [{ id: 'option-1', name: 'Small', plates: [{ ...first!, diameter: { mm: 300 } }] }],
    };
    const { parts, now } = browserWith(own);
    const chosen = chooseOption(own, 'option-1');
    const back = approve(chosen, { ...asked, fingerprint: fingerprintOf(chosen) });
    const cameBack = await approvalBack(back, parts, BUILT_IN);
    expect(cameBack).toMatchObject({ option: 'Small', changedSince: false, orderBy: [] });
    await cameBack?.take(false);
    expect(fingerprintOf(now())).toBe(fingerprintOf(chosen));
    expect(isAllApproved(standingOf(now(), fingerprintOf(now())))).toBe(true);
    expect(now().revisions?.map((r) => r.fingerprint)).toEqual([fingerprintOf(wedding), fingerprintOf(chosen)]);
  });

  it.each([true, false])('of another number is a question: %s', async (withOrder) => {
    const { parts, now } = browserWith(wedding);
    const six: Design = { ...wedding, plates: wedding.plates.map((p) => ({ ...p, quantity: 6 })) };
    const cameBack = await approvalBack(approve(six, { ...asked, fingerprint: fingerprintOf(six) }), parts, BUILT_IN);
    expect(cameBack?.orderBy[0]?.english).toBe(`${wedding.plates[0]!.name}: 1 off (approved: 6)`);
    await cameBack?.take(withOrder);
    expect(now().plates[0]?.quantity).toBe(withOrder ? 6 : 1);
    expect(isAllApproved(standingOf(now(), fingerprintOf(now())))).toBe(withOrder);
  });

  it('of an earlier version binds the drawing only, on the own design too', async () => {
    const { parts, now } = browserWith(wedding);
    const { offer: _, ...bare } = approved.approval!;
    await (await approvalBack({ ...approved, approval: bare }, parts, BUILT_IN))?.take(false);
    expect(standingOf(now(), fingerprintOf(now()))).toMatchObject({ kind: 'approved', order: { kind: 'unbound' } });
  });

  it('takes the design over from the tab that has it open, so that no copy is approved in its place', async () => {
    const { parts, now, tab } = browserWith(wedding, 'elsewhere');
    await (await approvalBack(approved, parts, BUILT_IN))?.take(false);
    expect(tab()).toBe('mine');
    expect(now().approval?.name).toBe('Beata');
  });
});
