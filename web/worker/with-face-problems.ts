import type { FaceProblem } from '../../fonts/load-faces.ts';
import { sortFindings, verdictOf, type Finding } from '../../geometry/findings.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';

/**
 * Adds why a face could not be had to a plate that misses it. Without its letters the plate is not the one asked for,
 * so it must not be cut; the plain reason takes the place of what layout could only guess.
 */
export function withFaceProblems(
  plate: PlateResult,
  textsByFace: (faceId: string) => readonly string[],
  problems: readonly FaceProblem[],
): PlateResult {
  if (problems.length === 0) return plate;
  const added = problems.map((p): Finding => ({
    code: 'face-not-there',
    severity: 'stop',
    place: { kind: 'plate' },
    elementIds: textsByFace(p.faceId),
    sentence: p.problem,
    words: p.words,
  }));
  const findings = sortFindings([...added, ...plate.findings]);
  return { ...plate, findings, verdict: verdictOf(findings) };
}
