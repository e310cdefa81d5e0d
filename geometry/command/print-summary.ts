import { showFingerprint } from '../design/show-fingerprint.ts';
import type { Design } from '../design/schema.ts';
import { approvalOf } from '../files/approval.ts';
import type { FaceProblems } from '../files/findings-file.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { oneLine } from '../files/plain-text.ts';

const VERDICTS = {
  ready: 'holds together, ready to cut',
  look: 'holds together, with things to look at',
  stop: 'must not be cut',
};
const SAYS = { stop: 'do not cut', look: 'look at', note: 'to know' };

/** Tells the terminal; files: the DXF of each plate, where it was written. */
export function printSummary(
  design: Design,
  planned: readonly PlannedPlate[],
  problems: FaceProblems,
  files: readonly string[],
): void {
  console.log(`${oneLine(design.title, 120) || 'Stencil'}  ${showFingerprint(planned[0]?.plate.fingerprint ?? '')}`);
  const { text, order } = approvalOf(design, planned[0]?.plate.fingerprint ?? '');
  for (const line of [text, order]) if (line !== '') console.log(`  ${line}`);
  for (const { problem } of problems) console.log(`  font: ${oneLine(problem, 500)}`);
  planned.forEach(({ plate, plan }, i) => {
    const { openings, bridges, islands } = plate.measures;
    console.log(`${oneLine(plate.name, 60)}, ${plate.diameterMm.toFixed(1)} mm: ${VERDICTS[plate.verdict]}`);
    console.log(
      `  ${openings} openings, ${islands} loose pieces held by ${bridges} bridges, ` +
        `${(plan.cuttingLengthMm / 1000).toFixed(2)} m to cut, ${plan.pierces} pierces`,
    );
    for (const finding of plate.findings) console.log(`  ${SAYS[finding.severity]}: ${oneLine(finding.sentence, 500)}`);
    if (files[i]) console.log(`  ${files[i]}`);
  });
}
