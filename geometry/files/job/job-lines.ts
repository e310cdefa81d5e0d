/**
 * What a cut file of a sheet, or of one plate on it, draws: lines in the order of cutting, whatever the format.
 *
 * In: a sheet with its plan. Out: lines in the frame of the sheet, or of the plate (its centre the origin, unturned).
 * Net size: contours closed, true size, nothing else. Path: what the middle of the beam, jet or bit runs, half a kerf in
 * the waste, with the runs that lead in and out where they are wanted; small tabs part it. Last, on a layer that is not
 * cut: the edge of the sheet and what a remnant has lost.
 */
import { runsOf } from '../../cutplan/pass-runs.ts';
import type { CutPass } from '../../cutplan/sheet-plan.ts';
import { circleContour } from '../../measure/arc.ts';
import { unplacePoint } from '../../measure/clock.ts';
import type { Vertex } from '../../shapes.ts';
import type { PlacedPlate } from '../../sheet/sheets.ts';
import type { JobSheet } from './job.ts';

/** In plain trade words; each is a layer. */
export type LineKind = 'cut' | 'rim' | 'lead-in' | 'lead-out' | 'witness' | 'not cut';

export interface JobLine {
  readonly kind: LineKind;
  /** Of the pass it belongs to. */
  readonly pass: string;
  readonly closed: boolean;
  readonly run: readonly Vertex[];
}

export interface LineWishes {
  readonly size: { readonly kind: 'net' } | { readonly kind: 'path'; readonly leadIns: boolean };
  readonly witness: boolean;
  /** Why the plan no longer fits its designs, in English, where it is wanted all the same. */
  readonly outdated?: readonly string[];
  /** One plate alone, in its own frame; absent: the sheet. */
  readonly plate?: PlacedPlate;
}

export function jobLines({ sheet, plan }: JobSheet, wishes: LineWishes): JobLine[] {
  const { plate } = wishes;
  const lines = plan.passes
    .filter((pass) => (plate === undefined || pass.plate === plate.id) && (wishes.witness || pass.kind !== 'witness'))
    .flatMap((pass) => linesOfPass(pass, wishes.size));
  if (plate) return lines.map((line) => ({ ...line, run: intoPlate(line.run, plate) }));
  return [...lines, ...notCut(sheet)];
}

function linesOfPass(pass: CutPass, size: LineWishes['size']): JobLine[] {
  const kind = ({ opening: 'cut', rim: 'rim', witness: 'witness' } as const)[pass.kind];
  const line = (of: LineKind, run: readonly Vertex[], closed: boolean) => ({ kind: of, pass: pass.id, closed, run });
  if (size.kind === 'net') return [line(kind, pass.net, true)];
  return runsOf(pass).flatMap(({ leadIn, cut, closed, leadOut }) => [
    ...(size.leadIns && leadIn.length > 1 ? [line('lead-in', leadIn, false)] : []),
    line(kind, cut, closed),
    ...(size.leadIns && leadOut.length > 1 ? [line('lead-out', leadOut, false)] : []),
  ]);
}

/** Back from where the plate lies: it was turned clockwise, then moved. */
function intoPlate(run: readonly Vertex[], plate: PlacedPlate): Vertex[] {
  return run.map((v) => ({ ...unplacePoint(v, plate), bulge: v.bulge }));
}

function notCut({ widthMm, heightMm, gone }: JobSheet['sheet']): JobLine[] {
  const corners = [
    [0, 0],
    [widthMm, 0],
    [widthMm, heightMm],
    [0, heightMm],
  ] as const;
  const line = (run: readonly Vertex[]): JobLine => ({ kind: 'not cut', pass: '', closed: true, run });
  return [
    line(corners.map(([x, y]) => ({ x, y, bulge: 0 }))),
    ...gone.map((circle) => line(circleContour(circle.radiusMm, circle))),
  ];
}
