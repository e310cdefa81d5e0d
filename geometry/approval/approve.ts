import type { Approval, Design, Offer } from '../design/schema.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { offerHolds, offerOf } from './offer.ts';
import { keepAnew, findSameRevision, whyNoLetter } from './revisions.ts';
import { sameFingerprint } from './same-fingerprint.ts';

const LONGEST_NAME = 200;

/**
 * Who approves what: fingerprint is the whole one of the design as it is, at the moment by ISO 8601. offer: with the
 * price that was seen; absent: the design's own offer while it holds, else plates and title alone; none: it comes from an
 * earlier version, and binds the drawing only.
 */
export type Approving = Omit<Approval, 'offer'> & { readonly offer?: Offer | 'none' | undefined };

/** Why this cannot be approved, with what to do; undefined when it can. */
export function whyNoApproval(design: Design, asked: Pick<Approving, 'name' | 'fingerprint'>): Refused | undefined {
  if (tidied(asked.name) === '') return APPROVAL_EN.refused('approving.noName');
  return toBeMarked(design, asked) ? undefined : whyNoLetter(design);
}

/**
 * The design with an approval of what it is now. It is kept as a revision under the next letter, or the revision that
 * it is already is marked. Where it may not be (whyNoApproval), the design is given back unchanged.
 */
export function approve(design: Design, asked: Approving): Design {
  if (whyNoApproval(design, asked)) return design;
  const { at, how, fingerprint } = asked;
  const own = design.offer && offerHolds(design.offer, design, fingerprint) ? design.offer : undefined;
  const offer = asked.offer ?? own ?? offerOf(design, { fingerprint, made: at.slice(0, 10) });
  const given = { name: tidied(asked.name), at, how, fingerprint };
  const approval: Approval = offer === 'none' ? given : { ...given, offer };
  const marked = toBeMarked(design, asked);
  if (!marked) return { ...keepAnew(design, { at, why: '', fingerprint }, approval), approval };
  const revisions = design.revisions?.map((r) => (r === marked ? { ...r, approval } : r));
  return { ...design, ...(revisions && { revisions }), approval };
}

/** The revision that is the design as it is, cut by the same rules, unless somebody else approved that one before. */
function toBeMarked(design: Design, { name, fingerprint }: Pick<Approving, 'name' | 'fingerprint'>) {
  const same = findSameRevision(design);
  if (!same || !sameFingerprint(same.fingerprint, fingerprint)) return undefined;
  return same.approval === undefined || same.approval.name === tidied(name) ? same : undefined;
}

/** The design without its approval; the revision that carried it is kept, no longer marked as approved. */
export function withdrawApproval(design: Design): Design {
  const { approval, ...rest } = design;
  if (!approval) return design;
  const revisions = design.revisions?.map((r) => {
    const { approval: theirs, ...bare } = r;
    const same = theirs?.name === approval.name && theirs.at === approval.at;
    return same && sameFingerprint(r.fingerprint, approval.fingerprint) ? bare : r;
  });
  return { ...rest, ...(revisions && { revisions }) };
}

function tidied(name: string): string {
  return name
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .trim()
    .slice(0, LONGEST_NAME);
}
