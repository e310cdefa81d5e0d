import type { Approval, Design } from '../design/schema.ts';
import { approvedRevision } from './approved-revision.ts';
import { revisionDesign } from './revisions.ts';
import { sameFingerprint } from './same-fingerprint.ts';

/**
 * How a design stands to its approval. open: nobody approved it. approved: what is cut is what was approved; letter of
 * the revision, where it is carried. changed: something else was approved; was: that, where it is carried.
 */
export type Standing =
  | { readonly kind: 'open' }
  | { readonly kind: 'approved'; readonly approval: Approval; readonly letter?: string }
  | { readonly kind: 'changed'; readonly approval: Approval; readonly letter?: string; readonly was?: Design };

/**
 * fingerprint: of the design as it is, by the shop's own rules where they count (fingerprintOf): whole, or the first 8
 * digits that a plate carries. Only approval and revisions are read of the design.
 */
export function standingOf(design: Design, fingerprint: string): Standing {
  const { approval } = design;
  if (!approval) return { kind: 'open' };
  const revision = approvedRevision(design);
  const letter = revision && { letter: revision.letter };
  if (sameFingerprint(approval.fingerprint, fingerprint)) return { kind: 'approved', approval, ...letter };
  return { kind: 'changed', approval, ...letter, ...(revision && { was: revisionDesign(design, revision.letter) }) };
}
