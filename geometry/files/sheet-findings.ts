import { type Finding, type Severity, sortFindings } from '../findings.ts';
import type { PlannedPlate } from './sheet-drawing.ts';

export interface SheetFinding {
  readonly severity: Severity;
  readonly sentence: string;
  /** Names of the plates it was found on; empty when that is all of them. */
  readonly plates: readonly string[];
}

/** Findings of all plates, worst first; the same sentence on several plates stands once. */
export function gatherFindings(plates: readonly PlannedPlate[]): SheetFinding[] {
  const found = new Map<string, { finding: Finding; plates: string[] }>();
  for (const { plate } of plates) {
    for (const finding of plate.findings) {
      const key = `${finding.severity} ${finding.sentence}`;
      const known = found.get(key);
      if (!known) found.set(key, { finding, plates: [plate.name] });
      else if (!known.plates.includes(plate.name)) known.plates.push(plate.name);
    }
  }
  const rows = [...found.values()];
  return sortFindings(rows.map((row) => row.finding)).map((finding) => {
    const names = rows.find((row) => row.finding === finding)?.plates ?? [];
    return {
      severity: finding.severity,
      sentence: finding.sentence,
      plates: names.length === plates.length ? [] : names,
    };
  });
}

/** The verdict over all plates, as a sentence. */
export function verdictSentence(findings: readonly SheetFinding[]): string {
  const stops = findings.filter((f) => f.severity === 'stop').length;
  const looks = findings.filter((f) => f.severity === 'look').length;
  if (stops > 0) return `Must not be cut: ${stops} ${stops === 1 ? 'fault' : 'faults'}, below`;
  if (looks > 0) return `Holds together; ${looks} ${looks === 1 ? 'thing' : 'things'} to look at, below`;
  return 'Holds together, ready to cut';
}
