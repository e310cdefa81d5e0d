import { verdictOf, type Finding, type Verdict } from '../../../geometry/findings.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';

/** The same said of several plates, once. */
export interface Gathered {
  readonly finding: Finding;
  readonly on: readonly { readonly plateId: string; readonly name: string }[];
}

type Found = Pick<PlateResult, 'plateId' | 'name' | 'findings'>;

/** Findings of all plates of a design, worst first as each plate has them. */
export function gatherFindings(plates: readonly Found[]): readonly Gathered[] {
  const gathered = new Map<string, { finding: Finding; on: { plateId: string; name: string }[] }>();
  for (const { plateId, name, findings } of plates) {
    for (const finding of findings) {
      const key = `${finding.severity} ${finding.code} ${finding.elementIds.join()} ${finding.sentence}`;
      const known = gathered.get(key);
      if (!known) gathered.set(key, { finding, on: [{ plateId, name }] });
      else if (!known.on.some((p) => p.plateId === plateId)) known.on.push({ plateId, name });
    }
  }
  return [...gathered.values()];
}

/** What the findings of all plates come to. */
export function countFindings(plates: readonly Found[]): {
  readonly verdict: Verdict;
  readonly stops: number;
  readonly looks: number;
} {
  const all = gatherFindings(plates).map(({ finding }) => finding);
  const count = (severity: Finding['severity']): number => all.filter((f) => f.severity === severity).length;
  return { verdict: verdictOf(all), stops: count('stop'), looks: count('look') };
}
