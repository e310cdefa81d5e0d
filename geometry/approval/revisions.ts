import { MOST_REVISIONS } from '../design/limits.ts';
import type { Approval, Design, Revision } from '../design/schema.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { sameSnapshot, snapshotOf, withSnapshot } from './snapshot.ts';

/**
 * Most characters that all revisions may take together: with fonts and drawings a design must stay well below what is
 * read (LONGEST_DESIGN_TEXT), or the file that was saved could never be opened again.
 */
const LONGEST_REVISIONS = 4_000_000;

const WHY_LONGEST = 200;

export interface Keeping {
  /** Moment by ISO 8601. */
  readonly at: string;
  /** In the words of whoever keeps it. */
  readonly why: string;
  /** Whole fingerprint of the design as it is. */
  readonly fingerprint: string;
}

/** Why the design as it is cannot be kept as a revision, with what to do; undefined when it can, or is kept already. */
export function whyNoRevision(design: Design): Refused | undefined {
  return findSameRevision(design) === undefined ? whyNoLetter(design) : undefined;
}

/** Why there is no further letter for it, kept already or not. */
export function whyNoLetter(design: Design): Refused | undefined {
  const revisions = design.revisions ?? [];
  if (nextLetter(revisions) === undefined || revisions.length >= MOST_REVISIONS)
    return APPROVAL_EN.refused('revisions.full');
  const length = JSON.stringify(revisions).length + JSON.stringify(snapshotOf(design)).length;
  return length > LONGEST_REVISIONS ? APPROVAL_EN.refused('revisions.large') : undefined;
}

/**
 * Keeps the design as it is under the next letter. One that is kept as it is already, and one that cannot be kept
 * (whyNoRevision), is given back unchanged.
 */
export function keepRevision(design: Design, keeping: Keeping): Design {
  return findSameRevision(design) === undefined ? keepAnew(design, keeping) : design;
}

/** The same, kept already or not, and under an approval if there is one. */
export function keepAnew(design: Design, { at, why, fingerprint }: Keeping, approval?: Approval): Design {
  const revisions = design.revisions ?? [];
  const letter = nextLetter(revisions);
  if (letter === undefined || whyNoLetter(design) !== undefined) return design;
  const kept: Revision = {
    letter,
    at,
    why: why.trim().slice(0, WHY_LONGEST),
    fingerprint,
    ...(approval && { approval }),
    design: snapshotOf(design),
  };
  return { ...design, revisions: [...revisions, kept] };
}

/** The last revision that is the design exactly as it is, title and quantities included. */
export function findSameRevision(design: Design): Revision | undefined {
  const now = snapshotOf(design);
  return design.revisions?.findLast((r) => sameSnapshot(r.design, now));
}

/** A letter follows the last one used and is never given twice: it may stand on paper. undefined after Z. */
export function nextLetter(revisions: readonly Revision[]): string | undefined {
  const last = Math.max(...revisions.map((r) => r.letter.charCodeAt(0)), 'A'.charCodeAt(0) - 1);
  return last < 'Z'.charCodeAt(0) ? String.fromCharCode(last + 1) : undefined;
}

/**
 * A revision as a design of its own, with the fonts, the order and the marks of now: under its own approval, without
 * options and revisions. The letter must be one of the design's revisions.
 */
export function revisionDesign(design: Design, letter: string): Design {
  const revision = revisionOf(design, letter);
  const { approval: _a, options: _o, revisions: _r, ...rest } = withSnapshot(design, revision.design);
  return { ...rest, ...(revision.approval && { approval: revision.approval }) };
}

/**
 * The design as it was in a revision. What is now is kept as a revision first, unless it is kept already; where that
 * cannot be (whyNoRevision), the design is given back unchanged. The approval stays the last that was given: it holds
 * again if what comes back is what was approved.
 */
export function bringBack(design: Design, letter: string, keeping: Keeping): Design {
  const revision = revisionOf(design, letter);
  if (sameSnapshot(revision.design, snapshotOf(design)) || whyNoRevision(design) !== undefined) return design;
  return withSnapshot(keepRevision(design, keeping), revision.design);
}

/** The design without its revisions, as a copy of its own that begins anew at A; its approval stays. */
export function withoutRevisions(design: Design): Design {
  const { revisions: _, ...rest } = design;
  return rest;
}

function revisionOf(design: Design, letter: string): Revision {
  const revision = design.revisions?.find((r) => r.letter === letter);
  if (!revision) throw new RangeError(`no revision ${letter}`);
  return revision;
}
