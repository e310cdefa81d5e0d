import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acceptedOf, acceptFinding, isAccepted } from '../../geometry/approval/acceptances.ts';
import { approve, whyNoApproval, withdrawApproval } from '../../geometry/approval/approve.ts';
import { differencesOf } from '../../geometry/approval/differences.ts';
import { addOption, chooseOption, dropOption, editOption, optionDesigns } from '../../geometry/approval/options.ts';
import {
  bringBack,
  keepRevision,
  nextLetter,
  revisionDesign,
  whyNoRevision,
  withoutRevisions,
} from '../../geometry/approval/revisions.ts';
import { beginsAlike, sameFingerprint } from '../../geometry/approval/same-fingerprint.ts';
import { standingOf } from '../../geometry/approval/standing.ts';
import { canonicalJson } from '../../geometry/design/canonical-json.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { isText } from '../../geometry/design/kinds.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { MOST_OWN_FACES, addOwnFace } from '../../web/state/actions/elements/add-own-face.ts';
import { approve as approveAction, bringBack as bringBackAction } from '../../web/state/actions/agreed/agree.ts';
import { createDesignStore } from '../../web/state/design-store.ts';
import type { Change } from '../../web/state/change.ts';
import { demo, DEMOS } from './demos.ts';
import { someEdits } from './random-edits.ts';

const PERRY = demo('makers-head');
const AT = '2027-01-04T09:30:00+01:00';

function asApproved(design: Design, name = 'Ada Pell', at = AT): Design {
  return approve(design, { name, at, how: 'link', fingerprint: fingerprintOf(design) });
}

function withText(design: Design, text: string): Design {
  const first = design.elements.find(isText)?.id;
  return { ...design, elements: design.elements.map((e) => (e.id === first && isText(e) ? { ...e, text } : e)) };
}

function keep(design: Design): Design {
  return keepRevision(design, { at: AT, why: '', fingerprint: fingerprintOf(design) });
}

function reread(design: Design): Design {
  const read = readDesign(designText(design));
  if ('problem' in read) throw new Error(read.problem);
  return read.design;
}

describe('fingerprints', () => {
  it('are the same only when all 64 digits are; of 8 and more it is told that they begin alike', () => {
    const whole = fingerprintOf(PERRY);
    expect(sameFingerprint(whole, whole)).toBe(true);
    for (const n of [0, 1, 7, 8, 12, 16, 63]) {
      expect(sameFingerprint(whole, whole.slice(0, n))).toBe(false);
      expect(sameFingerprint(whole.slice(0, n), whole.slice(0, n))).toBe(false);
      expect(beginsAlike(whole.slice(0, n), whole)).toBe(n >= 8);
    }
    expect(beginsAlike(whole, whole)).toBe(false);
    expect(sameFingerprint('', '')).toBe(false);
    expect(sameFingerprint(`${whole.slice(0, 63)}g`, whole)).toBe(false);
    const other = `${whole.slice(0, 63)}${whole.endsWith('0') ? '1' : '0'}`;
    expect(sameFingerprint(other, whole)).toBe(false);
  });
});

describe('an approval', () => {
  it('holds for what was approved and says what that was once it is changed', () => {
    const approved = asApproved(PERRY);
    expect(standingOf(PERRY, fingerprintOf(PERRY))).toEqual({ kind: 'open' });
    expect(standingOf(approved, fingerprintOf(approved))).toMatchObject({
      kind: 'approved',
      letter: 'A',
      approval: { name: 'Ada Pell', at: AT, how: 'link' },
    });
    const changed = withText(approved, 'OAT');
    const standing = standingOf(changed, fingerprintOf(changed));
    expect(standing).toMatchObject({ kind: 'changed', letter: 'A' });
    if (standing.kind !== 'changed' || !standing.was) throw new Error('what was approved is lost');
    expect(fingerprintOf(standing.was)).toBe(approved.approval?.fingerprint);
    expect(differencesOf(standing.was, changed, { book: BUILT_IN })).toHaveLength(1);
    expect(standingOf(standing.was, fingerprintOf(standing.was)).kind).toBe('approved');
  });
  it('of an empty name is refused', () => {
    for (const name of ['', '   ', '\n\t']) {
      expect(asApproved(PERRY, name)).toBe(PERRY);
      expect(whyNoApproval(PERRY, { name, fingerprint: fingerprintOf(PERRY) })?.problem).toMatch(/^Nobody is named\./);
    }
  });
  it('marks a revision that is there already, and begins a letter where somebody else approved the same', () => {
    const kept = keep(PERRY);
    const once = asApproved(kept);
    expect(once.revisions?.map((r) => [r.letter, r.approval?.name])).toEqual([['A', 'Ada Pell']]);
    const twice = asApproved(once, 'Ben Oke', '2027-01-05');
    expect(twice.revisions?.map((r) => [r.letter, r.approval?.name])).toEqual([
      ['A', 'Ada Pell'],
      ['B', 'Ben Oke'],
    ]);
    expect(standingOf(twice, fingerprintOf(twice))).toMatchObject({ letter: 'B' });
  });
  it('is withdrawn with its mark, and what was approved is kept', () => {
    const withdrawn = withdrawApproval(asApproved(PERRY));
    expect(withdrawn.approval).toBeUndefined();
    expect(withdrawn.revisions?.map((r) => [r.letter, r.approval])).toEqual([['A', undefined]]);
    expect(withdrawApproval(PERRY)).toBe(PERRY);
  });
  it('counts neither empty nor shortened, whatever a file claims; of 8 digits it is to be compared by eye', () => {
    for (const fingerprint of ['', fingerprintOf(PERRY).slice(0, 7), 'zzzzzzzzzz']) {
      const claimed: Design = { ...PERRY, approval: { name: 'Ada Pell', at: AT, how: 'paper', fingerprint } };
      expect(standingOf(claimed, fingerprintOf(claimed)).kind).toBe('changed');
    }
    const older: Design = {
      ...PERRY,
      approval: { name: 'Ada Pell', at: '2027-01-04', how: 'paper', fingerprint: fingerprintOf(PERRY).slice(0, 8) },
    };
    expect(standingOf(older, fingerprintOf(older)).kind).toBe('short');
    expect(standingOf(older, fingerprintOf(older).slice(0, 8)).kind).toBe('changed');
  });
  it('holds exactly as long as nothing is cut otherwise, whatever is changed', () => {
    fc.assert(
      fc.property(someEdits, (edit) => {
        const approved = asApproved(PERRY);
        const changed = edit(approved);
        const standing = standingOf(changed, fingerprintOf(changed));
        const differs = differencesOf(PERRY, changed, { book: BUILT_IN }).length > 0;
        expect(standing.kind).toBe(differs ? 'changed' : 'approved');
      }),
      { seed: 3, numRuns: 200 },
    );
  });
  it('is taken back by undo as one step, and a change brought back is one too', () => {
    const store = createDesignStore(PERRY);
    const apply = (change: Change) => store.getState().apply(change);
    const undo = () => store.getState().undo();
    const now = () => store.getState().history.present;
    apply(approveAction(now(), { name: 'Ada Pell', at: AT, how: 'link', fingerprint: fingerprintOf(now()) }));
    const approved = now();
    apply({ design: withText(approved, 'OAT'), undo: 'step' });
    const changed = now();
    apply(bringBackAction(changed, 'A', { at: AT, why: '', fingerprint: fingerprintOf(changed) }));
    expect(standingOf(now(), fingerprintOf(now())).kind).toBe('approved');
    expect(now().revisions?.map((r) => r.letter)).toEqual(['A', 'B']);
    undo();
    expect(now()).toBe(changed);
    undo();
    undo();
    expect(now()).toBe(PERRY);
  });
});

describe('revisions', () => {
  it('are given back whole, after a round trip through a file', () => {
    for (const [, design] of DEMOS) {
      const kept = reread(withText(keep(design), 'OTHER'));
      expect(fingerprintOf(revisionDesign(kept, 'A'))).toBe(fingerprintOf(design));
      expect(canonicalJson(withoutRevisions(bringBack(kept, 'A', { at: AT, why: '', fingerprint: '' })))).toBe(
        canonicalJson(design),
      );
    }
  });
  it('are not kept twice, and follow each other to Z, which is told', () => {
    expect(keep(keep(PERRY)).revisions).toHaveLength(1);
    let design = PERRY;
    for (let i = 0; i < 26; i++) design = keep(withText(design, `CASK ${i}`));
    expect(design.revisions?.map((r) => r.letter).join('')).toBe('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
    expect(whyNoRevision(design)).toBeUndefined();
    const next = withText(design, 'CASK 26');
    expect(whyNoRevision(next)?.problem).toMatch(/^The letters A to Z are all used/);
    expect(keep(next)).toBe(next);
    expect(asApproved(next)).toBe(next);
    expect(bringBack(next, 'A', { at: AT, why: '', fingerprint: '' })).toBe(next);
    expect(keep(withoutRevisions(next)).revisions?.map((r) => r.letter)).toEqual(['A']);
    expect(reread(design).revisions).toHaveLength(26);
  });
  it('never use a letter again that a later one follows', () => {
    const two = keep(withText(keep(PERRY), 'OAT'));
    const onlySecond = { ...two, revisions: two.revisions?.slice(1) ?? [] };
    expect(nextLetter(onlySecond.revisions)).toBe('C');
  });
  it('too large to be read again are not kept', () => {
    const path = `M-0.5 -0.5${'L0.5 0.5'.repeat(49_000)}Z`;
    const drawing = {
      kind: 'artwork',
      id: 'big',
      name: 'big',
      path,
      x: 0,
      y: 0,
      size: 1,
      turnDeg: 0,
      around: 'once',
    } as const;
    let design: Design = { ...PERRY, elements: [...PERRY.elements, drawing] };
    for (let i = 0; i < 26; i++) design = keep(withText(design, `CASK ${i}`));
    expect(whyNoRevision(withText(design, 'MORE'))?.problem).toMatch(/so large/);
    expect(reread(design).revisions?.length).toBeGreaterThan(5);
  });
  it('keep the fonts of one’s own that they use', () => {
    const face = (n: number) => ({ id: `own:0000000${n}`, name: `F${n}`, data: 'AAAA' });
    const set = (design: Design, n: number) =>
      addOwnFace(design, face(n), design.elements.find(isText)?.id ?? '').design;
    let design = keep(set(PERRY, 0));
    for (let n = 1; n < MOST_OWN_FACES; n++) design = set(design, n);
    expect(design.ownFaces).toHaveLength(8);
    const ninth = addOwnFace(design, { ...face(8), id: 'own:00000008' }).design;
    expect(ninth.ownFaces.map((f) => f.name)).toContain('F0');
    expect(ninth.ownFaces.map((f) => f.name)).not.toContain('F1');
  });
});

describe('options', () => {
  const text = PERRY.elements.find(isText)!;
  const two = addOption(addOption(PERRY, { name: 'Plain', faces: { [text.id]: 'tinos-400' } }), {
    name: 'Thick',
    stock: { ...PERRY.stock, thicknessMm: 3 },
    plates: PERRY.plates.slice(0, 1),
  });
  const cuts = (design: Design) =>
    optionDesigns(design)
      .map((o) => fingerprintOf(o.design))
      .sort();

  it('are designs of their own, the design itself first', () => {
    const [base, plain, thick] = optionDesigns(two);
    expect([base?.id, plain?.name, thick?.name]).toEqual(['base', 'Plain', 'Thick']);
    expect(canonicalJson(base?.design)).toBe(canonicalJson(PERRY));
    expect(differencesOf(PERRY, plain!.design, { book: BUILT_IN }).map((d) => d.code)).toEqual(['differences.face']);
    expect(differencesOf(PERRY, thick!.design, { book: BUILT_IN }).map((d) => d.code)).toContain(
      'differences.thickness',
    );
    expect(optionDesigns(two).every((o) => o.design.options === undefined)).toBe(true);
  });
  it('can be chosen one after another, and none is lost', () => {
    let design = two;
    for (const pick of [0, 1, 1, 0, 1]) {
      const option = design.options![pick]!;
      const wanted = optionDesigns(design).find((o) => o.id === option.id)!;
      const before = cuts(design);
      design = reread(chooseOption(design, option.id, 'As it was'));
      expect(fingerprintOf(design)).toBe(fingerprintOf(wanted.design));
      expect(cuts(design)).toEqual(before);
    }
    expect(chooseOption(two, 'nobody')).toBe(two);
  });
  it('can be edited and dropped, three at most', () => {
    const id = two.options![0]!.id;
    expect(editOption(two, id, { name: 'Even' }).options?.[0]).toEqual({ ...two.options![0], name: 'Even' });
    expect(editOption(two, two.options![1]!.id, { stock: undefined, plates: undefined }).options?.[1]).toEqual({
      id: two.options![1]!.id,
      name: 'Thick',
    });
    const three = addOption(two, { name: 'Third' });
    expect(addOption(three, { name: 'Fourth' })).toBe(three);
    expect(dropOption(dropOption(two, id), two.options![1]!.id)).toEqual(PERRY);
  });
});

describe('what was accepted', () => {
  const look = { code: 'thin', severity: 'look' } as const;
  const accepted = acceptFinding(PERRY, {
    finding: look,
    plate: 'large',
    who: 'Sam',
    at: AT,
    fingerprint: fingerprintOf(PERRY),
  });
  it('holds for its plate and its fingerprint only', () => {
    const now = acceptedOf(accepted, fingerprintOf(accepted));
    expect(isAccepted(look, 'large', now)).toBe(true);
    expect(isAccepted(look, 'half', now)).toBe(false);
    const changed = withText(accepted, 'OAT');
    expect(acceptedOf(changed, fingerprintOf(changed))).toEqual([]);
  });
  it('is never what stops a plate, whatever a file claims', () => {
    const stop = { code: 'thin', severity: 'stop' } as const;
    const fingerprint = fingerprintOf(PERRY);
    expect(acceptFinding(PERRY, { finding: stop, who: 'Sam', at: AT, fingerprint })).toBe(PERRY);
    expect(isAccepted(stop, 'large', acceptedOf(accepted, fingerprint))).toBe(false);
    expect(acceptFinding(PERRY, { finding: look, who: ' ', at: AT, fingerprint })).toBe(PERRY);
  });
});
