/**
 * A plate (or several) a row: each row is bridged, checked and proven on its own, as if it were the only one.
 *
 * In: a design with {column} places, the rows of a file, faces of the design, a store. Out: one step after the other, in
 * the order of the rows; nothing is kept of those before but what the store serves again. A row that fails is a step
 * with its reason, and the rest goes on. Stops between rows when the signal says so; what is known by its mark from an
 * earlier run comes as a step too, without being made again.
 */
import type { FaceSource } from '../adapters/face.ts';
import { documentMark, fingerprintOf } from '../design/fingerprint.ts';
import type { Design } from '../design/schema.ts';
import { verdictOf, type Verdict } from '../findings.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { planPlates } from '../pipeline/plan-plates.ts';
import type { SolveStore } from '../pipeline/solve-store.ts';
import { ownRules } from '../stock/own-rules.ts';
import type { StockBook } from '../stock/stock-book.ts';
import type { Refused } from '../sentences/wording.ts';
import { fillDesign } from './fill-design.ts';
import type { Rows } from './read-rows.ts';

export interface SeriesStep {
  /** Which row, from 1, of how many. */
  readonly number: number;
  readonly of: number;
  readonly line: number;
  readonly outcome: MadeRow | KnownRow | FailedRow;
}

export interface MadeRow {
  readonly kind: 'made';
  /** What the row is called: the cells that fill it. */
  readonly name: string;
  /** The same for the same filled design, stock and line, and for no other. */
  readonly mark: string;
  readonly design: Design;
  readonly planned: readonly PlannedPlate[];
  /** The worst of its plates. */
  readonly verdict: Verdict;
}

export interface KnownRow {
  readonly kind: 'known';
  readonly mark: string;
}

export interface FailedRow {
  readonly kind: 'failed';
  readonly reason: Refused;
}

export interface SeriesTools {
  readonly faces: FaceSource;
  readonly store: SolveStore;
  readonly book: StockBook;
  readonly signal?: AbortSignal;
  /** Whether a row of this mark is done already, by an earlier run. */
  readonly isDone?: (mark: string) => boolean;
}

/** The same for the same filled design, stock and line, and for no other. */
export function rowMark(filled: Design, line: number, book: StockBook): string {
  const fingerprint = fingerprintOf(filled, ownRules(filled, book));
  return `${line}-${fingerprint}-${documentMark(filled)}`;
}

/** A sentence when design and rows do not go together; otherwise the steps, made as they are asked for. */
export function runSeries(
  design: Design,
  { columns, rows }: Rows,
  tools: SeriesTools,
): { readonly steps: AsyncGenerator<SeriesStep, void> } | Refused {
  const form = fillDesign(design, columns);
  if ('problem' in form) return form;
  // Asynchronous so that callers may wait between rows for what they need; it waits for nothing itself.
  async function* steps(): AsyncGenerator<SeriesStep, void> {
    for (const [i, row] of rows.entries()) {
      if (tools.signal?.aborted) return;
      const step = { number: i + 1, of: rows.length, line: row.line };
      const filled = await Promise.resolve('problem' in form ? form : form.fill(row));
      yield {
        ...step,
        outcome: 'problem' in filled ? { kind: 'failed', reason: filled } : outcomeOf(filled, row.line),
      };
    }
  }
  function outcomeOf(filled: { design: Design; name: string }, line: number): MadeRow | KnownRow {
    const mark = rowMark(filled.design, line, tools.book);
    if (tools.isDone?.(mark)) return { kind: 'known', mark };
    const planned = planPlates(filled.design, tools.faces, tools.store, tools.book);
    const verdict = verdictOf(planned.flatMap(({ plate }) => plate.findings));
    return { kind: 'made', ...filled, mark, planned, verdict };
  }
  return { steps: steps() };
}
