/**
 * What a cut file of a sheet, or of one plate on it, draws: lines in the order of cutting, whatever the format.
 *
 * In: a sheet with its plan. Out: lines in the frame of the sheet, or of the plate (its centre the origin, unturned).
 * Net size: contours closed, true size, nothing else. Path: what the middle of the beam, jet or bit runs, half a kerf in
 * the waste, with the runs that lead in and out where they are wanted; small tabs part it. Last, on a layer that is not
 * cut: the edge of the sheet and what a remnant has lost.
 */
import { closeRun } from '../../cutplan/contour-walk.ts';
import { runsOf } from '../../cutplan/pass-runs.ts';
import type { CutPass, Run } from '../../cutplan/sheet-plan.ts';
import { circleContour } from '../../measure/arc.ts';
import { unplacePoint } from '../../measure/clock.ts';
import type { Vertex } from '../../shapes.ts';
import type { PlacedPlate } from '../../sheet/sheets.ts';
import type { JobSheet } from './job.ts';
import { type Move, movesTo } from './job-moves.ts';

/** In plain trade words; each is a layer. */
export type LineKind = 'cut' | 'rim' | 'lead-in' | 'lead-out' | 'witness' | 'move' | 'move raised' | 'not cut';

export interface JobLine {
  readonly kind: LineKind;
  /** Of the pass it belongs to. */
  readonly pass: string;
  readonly closed: boolean;
  readonly run: readonly Vertex[];
}

export interface LineWishes {
  readonly size:
    | { readonly kind: 'net' }
    /** joined: lead-in, contour, overlap and lead-out are one open line, which no reader can part or reorder. */
    | { readonly kind: 'path'; readonly leadIns: boolean; readonly joined?: boolean };
  /** Of a whole sheet with lead-ins: the ways between cuts as well, each before what it leads to. */
  readonly moves?: boolean;
  readonly witness: boolean;
  /** Without the block of text on layer NOTES. */
  readonly bare?: boolean;
  /** Why the plan no longer fits its designs, in English, where it is wanted all the same. */
  readonly outdated?: readonly string[];
  /** One plate alone, in its own frame; absent: the sheet. */
  readonly plate?: PlacedPlate;
}

export function jobLines({ sheet, plan }: JobSheet, wishes: LineWishes): JobLine[] {
  const { plate } = wishes;
  const drawn = plan.passes.filter(
    (pass) => (plate === undefined || pass.plate === plate.id) && (wishes.witness || pass.kind !== 'witness'),
  );
  const withMoves = wishes.moves === true && !plate && wishes.size.kind === 'path' && wishes.size.leadIns;
  const rapids = new Map(withMoves ? plan.rapids.map((rapid) => [rapid.to, rapid]) : []);
  const lines = drawn.flatMap((pass, i) => {
    const moves = withMoves ? movesTo(pass, drawn[i - 1], rapids.get(pass.id)) : [];
    return linesOfPass(pass, wishes.size, moves);
  });
  if (plate) return lines.map((line) => ({ ...line, run: intoPlate(line.run, plate) }));
  return [...lines, ...notCut(sheet)];
}

function linesOfPass(pass: CutPass, size: LineWishes['size'], moves: readonly Move[]): JobLine[] {
  const kind = ({ opening: 'cut', rim: 'rim', witness: 'witness' } as const)[pass.kind];
  const line = (of: LineKind, run: readonly Vertex[], closed: boolean) => ({ kind: of, pass: pass.id, closed, run });
  if (size.kind === 'net') return [line(kind, pass.net, true)];
  const { leadIns: leads } = size;
  return runsOf(pass).flatMap(({ leadIn, cut, closed, leadOut }, i) => [
    ...moves.slice(i, i + 1).map(({ raised, way }) =>
      line(
        raised ? 'move raised' : 'move',
        way.map((p) => ({ x: p.x, y: p.y, bulge: 0 })),
        false,
      ),
    ),
    ...(size.joined
      ? [line(kind, joinRun(leadIn, closed ? closeRun(cut) : cut, leadOut), false)]
      : partsOf(leadIn, cut, closed, leadOut)),
  ]);

  function partsOf(leadIn: Run, cut: Run, closed: boolean, leadOut: Run): JobLine[] {
    return [
      ...(leads && leadIn.length > 1 ? [line('lead-in', leadIn, false)] : []),
      line(kind, cut, closed),
      ...(leads && leadOut.length > 1 ? [line('lead-out', leadOut, false)] : []),
    ];
  }
}

/** Runs end to end as one; where one ends the next begins. */
function joinRun(...runs: readonly Run[]): Vertex[] {
  const there = runs.filter((run) => run.length > 1);
  return there.flatMap((run, i) => (i < there.length - 1 ? run.slice(0, -1) : [...run]));
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
