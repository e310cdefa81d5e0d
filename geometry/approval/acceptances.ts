import { MOST_ACCEPTED } from '../design/limits.ts';
import type { Acceptance, Design } from '../design/schema.ts';
import type { Finding } from '../findings.ts';
import { beginningOf } from '../sentences/shorten.ts';
import { sameFingerprint } from './same-fingerprint.ts';

export interface Accepting {
  readonly finding: Pick<Finding, 'code' | 'severity'>;
  /** Id of the plate that it was found on. */
  readonly plate?: string;
  readonly who: string;
  /** Moment by ISO 8601. */
  readonly at: string;
  /** Whole fingerprint of the design as it is. */
  readonly fingerprint: string;
}

/** True for a finding that a person may let be: never one that stops a plate. */
export function mayBeAccepted({ severity }: Pick<Finding, 'severity'>): boolean {
  return severity !== 'stop';
}

/**
 * Notes that somebody looked at a finding of the design as it is and lets it be. Unchanged without a name, for what
 * stops a plate, and for what is accepted already.
 */
export function acceptFinding(design: Design, { finding, plate, who, at, fingerprint }: Accepting): Design {
  const name = beginningOf(who.trim(), 200);
  if (name === '' || !mayBeAccepted(finding)) return design;
  if (isAccepted(finding, plate, acceptedOf(design, fingerprint))) return design;
  const added: Acceptance = { code: finding.code, ...(plate !== undefined && { plate }), who: name, at, fingerprint };
  return { ...design, accepted: [...(design.accepted ?? []), added].slice(-MOST_ACCEPTED) };
}

/** What was accepted of this very fingerprint; what was accepted before a change holds no longer. */
export function acceptedOf(design: Design, fingerprint: string): readonly Acceptance[] {
  return (design.accepted ?? []).filter((a) => sameFingerprint(a.fingerprint, fingerprint));
}

/** Whether a finding on a plate is among what was accepted (acceptedOf). What stops a plate never is. */
export function isAccepted(
  finding: Pick<Finding, 'code' | 'severity'>,
  plate: string | undefined,
  accepted: readonly Acceptance[],
): boolean {
  return mayBeAccepted(finding) && accepted.some((a) => a.code === finding.code && a.plate === plate);
}
