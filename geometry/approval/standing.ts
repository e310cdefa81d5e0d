/**
 * How approval binds. This folder is pure and takes moments as given.
 *
 * - approve.ts sets an approval of the whole fingerprint and keeps what was approved as a revision; no letter comes twice.
 * - This file alone says open, approved or changed; files, command and page ask it. It says two things: how the drawing
 *   stands (kind), and how the order stands (order: plates by size and number, title, offer).
 * - Fingerprints are compared by same-fingerprint.ts only: all 64 digits. A shortened one of an older file that agrees so
 *   far makes the design `short`: to be compared by eye, and not approved.
 * - differences.ts says what is cut differently, and promises a difference whenever fingerprints differ. What the
 *   fingerprint begins to count needs its sentence there and its edit in tests/approval/random-edits.ts.
 * - What was accepted holds for its fingerprint, and never for what stops a plate.
 * - A function that may not do what is asked gives the design back unchanged; `why...` beside it says why.
 * - A link carries options, approval and only the approved revision, where it fits. Fonts stay in a design as long as an
 *   option or a revision uses them (facesNeeded).
 */

import type { Approval, Design, Offer } from '../design/schema.ts';
import { visible } from '../design/visible.ts';
import type { Wording } from '../sentences/wording.ts';
import { approvedRevision } from './approved-revision.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import { changesSince, numberWords, offerChanges, offerHolds, totalWords } from './offer.ts';
import { revisionDesign } from './revisions.ts';
import { beginsAlike, sameFingerprint } from './same-fingerprint.ts';

/**
 * How a design stands to its approval. open: nobody approved it. approved: what is cut is what was approved; letter of
 * the revision, where it is carried. changed: something else was approved; was: that, where it is carried. short: the
 * approval carries only the first digits of a fingerprint; they agree, which another design's might too.
 */
export type Standing =
  | { readonly kind: 'open' }
  | (Given & { readonly kind: 'approved' })
  | (Given & { readonly kind: 'short' })
  | (Given & { readonly kind: 'changed'; readonly was?: Design });

interface Given {
  readonly approval: Approval;
  readonly letter?: string;
  readonly order: OrderStanding;
}

/**
 * How what is ordered stands to what was approved. unbound: the approval is of an earlier version and says nothing of
 * it. changed: by what, in words, at least one.
 */
export type OrderStanding =
  | { readonly kind: 'unbound' }
  | { readonly kind: 'approved'; readonly offer: Offer }
  | { readonly kind: 'changed'; readonly offer: Offer; readonly by: readonly Wording[] };

/**
 * fingerprint: the whole one of the design as it is, by the shop's own rules where they count (fingerprintOf).
 */
export function standingOf(design: Design, fingerprint: string): Standing {
  const { approval } = design;
  if (!approval) return { kind: 'open' };
  const revision = approvedRevision(design);
  const given = {
    approval,
    ...(revision && { letter: revision.letter }),
    order: orderStanding(design, approval, fingerprint),
  };
  if (sameFingerprint(approval.fingerprint, fingerprint)) return { kind: 'approved', ...given };
  if (beginsAlike(approval.fingerprint, fingerprint)) return { kind: 'short', ...given };
  return { kind: 'changed', ...given, ...(revision && { was: revisionDesign(design, revision.letter) }) };
}

/** True when both are as approved: what is cut, and what is ordered where the approval says so. */
export function isAllApproved(standing: Standing): boolean {
  return standing.kind === 'approved' && standing.order.kind !== 'changed';
}

/**
 * The offer that counts for the design as it is: the one that was approved while drawing and order are as approved, else
 * the last that was made while it says what the design is. undefined: prices are those of the day.
 */
export function offerNow(design: Design, fingerprint: string): Offer | undefined {
  const standing = standingOf(design, fingerprint);
  if (standing.kind === 'approved' && standing.order.kind === 'approved') return standing.order.offer;
  const { offer } = design;
  return offer && offerHolds(offer, design, fingerprint) ? offer : undefined;
}

/** How the order stands, in words; loud where it is not what was approved. */
export function orderWords(order: OrderStanding): { readonly words: Wording; readonly loud: boolean } {
  const { say } = APPROVAL_EN;
  if (order.kind === 'unbound') return { words: say('agreed.drawingOnly'), loud: false };
  if (order.kind === 'changed') return { words: say('agreed.orderChanged', { by: order.by }), loud: true };
  const { offer } = order;
  const plates = offer.plates.map(({ name, quantity }) => say('agreed.plateCount', { quantity, plate: visible(name) }));
  if (offer.number === '' && !offer.price) return { words: say('agreed.orderApprovedPlates', { plates }), loud: false };
  const values = { plates, offer: numberWords(offer), total: totalWords(offer) };
  return { words: say('agreed.orderApproved', values), loud: false };
}

/** An offer that was made for something else than the design as it is says nothing of it. */
function orderStanding(design: Design, { offer, fingerprint }: Approval, now: string): OrderStanding {
  if (!offer) return { kind: 'unbound' };
  const later = design.offer && offerHolds(design.offer, design, now) ? design.offer : undefined;
  const by = [
    ...(sameFingerprint(offer.fingerprint, fingerprint) ? [] : [APPROVAL_EN.say('agreed.otherDrawing')]),
    ...changesSince(offer, design),
    ...offerChanges(offer, later),
  ];
  return by.length === 0 ? { kind: 'approved', offer } : { kind: 'changed', offer, by };
}
