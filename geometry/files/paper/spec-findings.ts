import { acceptedOf, isAccepted } from '../../approval/acceptances.ts';
import type { Design } from '../../design/schema.ts';
import { type Finding, type Severity, sortFindings } from '../../findings.ts';
import { capitalised } from '../../sentences/make-say.ts';
import { PAPER_EN } from '../../sentences/paper-en.ts';
import type { Wording } from '../../sentences/wording.ts';
import type { PaperWords } from './paper-words.ts';
import { oneLine } from '../plain-text.ts';
import type { PlannedPlate } from './plate-drawing.ts';

export interface SpecFinding {
  readonly severity: Severity;
  /** With who accepted it, where somebody did. */
  readonly sentence: string;
  /** Names of the plates it was found on; empty when that is all of them. */
  readonly plates: readonly string[];
}

/** Findings of all plates, worst first; the same sentence on several plates stands once. */
export function gatherFindings(
  design: Design,
  plates: readonly PlannedPlate[],
  words: PaperWords,
): readonly SpecFinding[] {
  const found = new Map<string, { finding: Finding; sentence: string; plates: string[] }>();
  for (const { plate } of plates) {
    const accepted = acceptedOf(design, plate.fingerprint);
    for (const finding of plate.findings) {
      const said = finding.words ? capitalised(words.speak(finding.words)) : finding.sentence;
      const by = accepted.findLast((a) => isAccepted(finding, plate.plateId, [a]));
      const sentence = by
        ? words.say('paperSheet.acceptedBy', { finding: said, who: oneLine(by.who, 60), at: oneLine(by.at, 40) })
        : said;
      const key = `${finding.severity} ${sentence}`;
      const known = found.get(key);
      if (!known) found.set(key, { finding, sentence, plates: [plate.name] });
      else if (!known.plates.includes(plate.name)) known.plates.push(plate.name);
    }
  }
  const rows = [...found.values()];
  return sortFindings(rows.map((row) => row.finding)).flatMap((finding) => {
    const row = rows.find((r) => r.finding === finding);
    if (!row) return [];
    const names = row.plates.length === plates.length ? [] : row.plates;
    return [{ severity: finding.severity, sentence: row.sentence, plates: names }];
  });
}

/** The verdict over all plates, as a sentence. */
export function verdictWords(findings: readonly SpecFinding[]): Wording {
  const stops = findings.filter((f) => f.severity === 'stop').length;
  const looks = findings.filter((f) => f.severity === 'look').length;
  if (stops > 0) return PAPER_EN.say('paperSheet.stopped', { count: stops });
  return looks > 0 ? PAPER_EN.say('paperSheet.readyLook', { count: looks }) : PAPER_EN.say('paperSheet.ready');
}
