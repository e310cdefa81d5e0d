import { standingOf } from '../approval/standing.ts';
import type { Design } from '../design/schema.ts';
import { approvalOf } from '../files/approval.ts';
import { fileNumber } from '../files/numbers.ts';
import { oneLine } from '../files/plain-text.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';

type Problems = readonly { readonly faceId: string; readonly problem: string }[];

/** What findings.json holds: plain data for whoever reads it next. */
export function findingsText(design: Design, planned: readonly PlannedPlate[], fontProblems: Problems): string {
  const record = {
    title: design.title,
    fingerprint: planned[0]?.plate.fingerprint,
    approval: standingRecord(design, planned[0]?.plate.fingerprint ?? ''),
    fontProblems: fontProblems.map(({ faceId, problem }) => ({ faceId, problem })),
    plates: planned.map(({ plate, plan }) => ({
      plateId: plate.plateId,
      name: plate.name,
      diameterMm: plate.diameterMm,
      quantity: plate.quantity,
      verdict: plate.verdict,
      measures: plate.measures,
      cuttingLengthMm: plan.cuttingLengthMm,
      pierces: plan.pierces,
      findings: plate.findings,
    })),
  };
  return `${JSON.stringify(record, roundNumber, 2)}\n`;
}

/** How the design stands to its approval: open, approved, or changed since; who, when, and which revision that was. */
function standingRecord(design: Design, fingerprint: string): object {
  const standing = standingOf(design, fingerprint);
  if (standing.kind === 'open') return { standing: 'open' };
  const { name, at, how, fingerprint: approved } = standing.approval;
  return { standing: standing.kind, revision: standing.letter, name, at, how, fingerprint: approved };
}

/** Numbers as in the cut files: sixteen digits of a coordinate help nobody. */
function roundNumber(_key: string, value: unknown): unknown {
  return typeof value === 'number' && Number.isFinite(value) ? Number(fileNumber(value)) : value;
}

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
  problems: Problems,
  files: readonly string[],
): void {
  console.log(`${oneLine(design.title, 120) || 'Stencil'}  ${planned[0]?.plate.fingerprint ?? ''}`);
  console.log(`  ${approvalOf(design, planned[0]?.plate.fingerprint ?? '').text}`);
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
