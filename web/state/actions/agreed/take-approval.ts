import { approve } from '../../../../geometry/approval/approve.ts';
import { sameFingerprint } from '../../../../geometry/approval/same-fingerprint.ts';
import { MOST_ACCEPTED } from '../../../../geometry/design/limits.ts';
import type { Acceptance, Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Whether a design is what somebody approved, or was: one of its revisions is. */
export function wasApprovedAs(design: Design, fingerprintNow: string, approved: string): 'now' | 'before' | undefined {
  if (sameFingerprint(approved, fingerprintNow)) return 'now';
  return design.revisions?.some((r) => sameFingerprint(r.fingerprint, approved)) ? 'before' : undefined;
}

/**
 * Puts an approval that came back on the design it is of, with what was let be along with it. Where the design was changed
 * meanwhile, it goes on the revision, unless somebody else's stands there, and the design stands as changed since.
 */
export function takeApproval(design: Design, from: Design, fingerprintNow: string): Change {
  const { approval } = from;
  if (!approval) return { design, undo: 'step' };
  const accepted = withAccepted(design.accepted, from.accepted);
  const so = accepted ? { ...design, accepted } : design;
  if (wasApprovedAs(design, fingerprintNow, approval.fingerprint) === 'now') {
    return { design: approve(so, { ...approval, offer: approval.offer ?? 'none' }), undo: 'step' };
  }
  const revisions = so.revisions?.map((r) =>
    sameFingerprint(r.fingerprint, approval.fingerprint) && (r.approval?.name ?? approval.name) === approval.name
      ? { ...r, approval }
      : r,
  );
  return { design: { ...so, approval, ...(revisions && { revisions }) }, undo: 'step' };
}

function withAccepted(own: Design['accepted'] = [], theirs: Design['accepted'] = []): Acceptance[] | undefined {
  const key = (a: Acceptance): string => `${a.fingerprint} ${a.code} ${a.plate ?? ''}`;
  const known = new Set(own.map(key));
  const more = theirs.filter((a) => !known.has(key(a)));
  return more.length === 0 ? undefined : [...own, ...more].slice(-MOST_ACCEPTED);
}
