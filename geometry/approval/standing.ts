/**
 * How approval binds. This folder is pure and takes moments as given.
 *
 * - approve.ts sets an approval of the whole fingerprint and keeps what was approved as a revision; no letter comes twice.
 * - This file alone says open, approved or changed; files, command and page ask it.
 * - Fingerprints are compared by same-fingerprint.ts only: all 64 digits. A shortened one of an older file that agrees so
 *   far makes the design `short`: to be compared by eye, and not approved.
 * - differences.ts says what is cut differently, and promises a difference whenever fingerprints differ. What the
 *   fingerprint begins to count needs its sentence there and its edit in tests/approval/random-edits.ts.
 * - What was accepted holds for its fingerprint, and never for what stops a plate.
 * - A function that may not do what is asked gives the design back unchanged; `why...` beside it says why.
 * - A link carries options, approval and only the approved revision, where it fits. Fonts stay in a design as long as an
 *   option or a revision uses them (facesNeeded).
 */

import type { Approval, Design } from '../design/schema.ts';
import { approvedRevision } from './approved-revision.ts';
import { revisionDesign } from './revisions.ts';
import { beginsAlike, sameFingerprint } from './same-fingerprint.ts';

/**
 * How a design stands to its approval. open: nobody approved it. approved: what is cut is what was approved; letter of
 * the revision, where it is carried. changed: something else was approved; was: that, where it is carried. short: the
 * approval carries only the first digits of a fingerprint; they agree, which another design's might too.
 */
export type Standing =
  | { readonly kind: 'open' }
  | { readonly kind: 'approved'; readonly approval: Approval; readonly letter?: string }
  | { readonly kind: 'short'; readonly approval: Approval; readonly letter?: string }
  | { readonly kind: 'changed'; readonly approval: Approval; readonly letter?: string; readonly was?: Design };

/**
 * fingerprint: the whole one of the design as it is, by the shop's own rules where they count (fingerprintOf). Only
 * approval and revisions are read of the design.
 */
export function standingOf(design: Design, fingerprint: string): Standing {
  const { approval } = design;
  if (!approval) return { kind: 'open' };
  const revision = approvedRevision(design);
  const letter = revision && { letter: revision.letter };
  if (sameFingerprint(approval.fingerprint, fingerprint)) return { kind: 'approved', approval, ...letter };
  if (beginsAlike(approval.fingerprint, fingerprint)) return { kind: 'short', approval, ...letter };
  return { kind: 'changed', approval, ...letter, ...(revision && { was: revisionDesign(design, revision.letter) }) };
}
