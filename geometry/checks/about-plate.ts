import type { Finding, Severity } from '../findings.ts';

/** A finding before it is said. */
export type Unsaid = Omit<Finding, 'sentence' | 'words'>;

/** A finding about the plate as a whole, not yet said; what was measured and its limit where there are such, mm. */
export function aboutPlate(code: string, severity: Severity, measuredMm?: number, limitMm?: number): Unsaid {
  return {
    code,
    severity,
    place: { kind: 'plate' },
    elementIds: [],
    ...(measuredMm !== undefined && { measuredMm }),
    ...(limitMm !== undefined && { limitMm }),
  };
}
