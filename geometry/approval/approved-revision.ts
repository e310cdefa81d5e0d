import type { Design, Revision } from '../design/schema.ts';
import { sameFingerprint } from './same-fingerprint.ts';

/** The revision that the design's approval is of: the last one of its fingerprint that it was written on. */
export function approvedRevision({ approval, revisions = [] }: Design): Revision | undefined {
  if (!approval) return undefined;
  return revisions.findLast(
    (r) =>
      r.approval !== undefined &&
      r.approval.name === approval.name &&
      r.approval.at === approval.at &&
      sameFingerprint(r.fingerprint, approval.fingerprint),
  );
}
