import { standingOf } from '../approval/standing.ts';
import type { CutPlan } from '../cutplan/cut-plan.ts';
import type { Design } from '../design/schema.ts';
import type { PlateResult } from '../plate/plate.ts';
import { fileNumber } from './numbers.ts';

export type FaceProblems = readonly { readonly faceId: string; readonly problem: string }[];

/** What findings.json holds: plain data for whoever reads it next. */
export function findingsText(
  design: Design,
  planned: readonly { readonly plate: PlateResult; readonly plan: CutPlan }[],
  fontProblems: FaceProblems,
): string {
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
  // Orders written before offers were compare byte for byte: what is not bound is left out.
  const { order } = standing;
  const said = order.kind === 'unbound' ? {} : { order: order.kind };
  const by = order.kind === 'changed' ? { by: order.by.map((words) => words.english) } : {};
  return { standing: standing.kind, revision: standing.letter, name, at, how, fingerprint: approved, ...said, ...by };
}

/** Numbers as in the cut files: sixteen digits of a coordinate help nobody. */
function roundNumber(_key: string, value: unknown): unknown {
  return typeof value === 'number' && Number.isFinite(value) ? Number(fileNumber(value)) : value;
}
