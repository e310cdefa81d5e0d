import { gunzipSync, gzipSync } from 'fflate';
import { loadFaces } from '../../fonts/browser-faces.ts';
import { createZip } from '../../geometry/adapters/zip-stream.ts';
import { fillDesign } from '../../geometry/series/fill-design.ts';
import { readRows, signsOf } from '../../geometry/series/read-rows.ts';
import { type MadeRow, rowMark, runSeries } from '../../geometry/series/run-series.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { writeDxf } from '../../geometry/files/dxf/dxf.ts';
import { plateFileNames, safePart } from '../../geometry/files/names.ts';
import { writeSvg } from '../../geometry/files/svg/svg.ts';
import type { SolveStore } from '../../geometry/pipeline/solve-store.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { SavedRow, SavedRows } from '../state/saved-rows.ts';
import type { SeriesEnd, SeriesHead, SeriesProgress, SeriesRow } from './cut-api.ts';

interface HeadTools {
  readonly book: StockBook;
  readonly saved: SavedRows;
}

interface Tools extends HeadTools {
  readonly store: SolveStore;
  readonly signal: AbortSignal;
  readonly anew: boolean;
}

/** What the table holds, whether it goes with the design, and how many of its rows an earlier run has made. */
export async function seriesHead(design: Design, bytes: Uint8Array, { book, saved }: HeadTools): Promise<SeriesHead> {
  const rows = readRows(bytes);
  if ('problem' in rows) return { refused: rows };
  const form = fillDesign(design, rows.columns);
  if ('problem' in form) return { refused: form };
  const marks = await saved.marks();
  let first: string | undefined;
  let known = 0;
  for (const row of rows.rows) {
    if (first !== undefined && marks.size === 0) break;
    const filled = form.fill(row);
    if ('problem' in filled) continue;
    first ??= filled.name;
    if (marks.size > 0 && marks.has(rowMark(filled.design, row.line, book))) known++;
  }
  return { columns: rows.columns, rows: rows.rows.length, known, ...(first !== undefined && { first }) };
}

/** How often the page is told, ms: a bar that moves, not a flood. */
const TOLD_EVERY_MS = 120;
/** Pieces of the archive are given to the browser as soon as they are so large together. */
const HANDED_OVER_BYTES = 4_000_000;

/**
 * A design for every row, into one archive: DXF and SVG of its plates; rows that fail are told and left out. What is
 * done is saved, and another run takes it from there; a run that came to its end forgets all that is not of it.
 */
export async function makeSeries(
  design: Design,
  bytes: Uint8Array,
  { saved, anew, ...tools }: Tools,
  told: (progress: SeriesProgress) => void,
): Promise<SeriesEnd> {
  const rows = readRows(bytes);
  if ('problem' in rows) return { refused: rows };
  const { faces } = await loadFaces(design, signsOf(rows));
  const marks = anew ? new Set<string>() : await saved.marks();
  const run = runSeries(design, rows, { ...tools, faces, isDone: (mark) => marks.has(mark) });
  if ('problem' in run) return { refused: run };
  const archive = archiveOfPieces();
  const of = rows.rows.length;
  const failed: SeriesRow[] = [];
  const seen = new Set<string>();
  let [done, known, lastTold] = [0, 0, 0];
  for await (const { line, outcome } of run.steps) {
    done++;
    if (outcome.kind === 'failed') failed.push({ line, name: '', reason: outcome.reason });
    else {
      seen.add(outcome.mark);
      const row = outcome.kind === 'known' ? await saved.read(outcome.mark) : rowOf(outcome, line, of);
      if (!row) throw new Error(`what was saved of line ${line} is gone`);
      if (outcome.kind === 'known') known++;
      else await saved.write(outcome.mark, row);
      for (const { name, packed } of row.files) archive.add(name, gunzipSync(packed));
      // written by rowOf, of this very build
      if (row.reason) failed.push({ line, name: row.name, reason: row.reason as NonNullable<SeriesRow['reason']> });
    }
    if (performance.now() - lastTold < TOLD_EVERY_MS) continue;
    lastTold = performance.now();
    told({ done, of, known, failed });
    // lets a press on Cancel come in
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
  told({ done, of, known, failed });
  if (done === of) await saved.keepOnly(seen);
  const name = `${safePart(design.title, 'series')}-series.zip`;
  return {
    file: { name, type: 'application/zip', bytes: archive.end() },
    made: done - failed.length,
    of,
    cancelled: done < of,
  };
}

/** The files of a row, or why it has none. */
function rowOf({ design, planned, name }: MadeRow, line: number, of: number): SavedRow {
  const stop = planned.flatMap(({ plate }) => plate.findings).find((f) => f.severity === 'stop');
  if (stop) {
    const reason: SeriesRow['reason'] = { sentence: stop.sentence, ...(stop.words && { words: stop.words }) };
    return { name, files: [], reason };
  }
  // Names begin with the line, so that a folder lists them in the order of the table.
  const row = String(line).padStart(Math.max(4, String(of + 1).length), '0');
  const plates = planned.map((p) => p.plate);
  const text = new TextEncoder();
  const files = (['dxf', 'svg'] as const).flatMap((kind) => {
    const names = plateFileNames(design.title, plates, kind);
    const write = kind === 'dxf' ? writeDxf : writeSvg;
    return planned.map(({ plate, plan }, i) => ({
      name: `${row}-${names[i]!}`,
      packed: gzipSync(text.encode(write(design, plate, plan)), { mtime: 0 }),
    }));
  });
  return { name, files };
}

/** An archive that hands itself over to the browser as it grows. */
function archiveOfPieces() {
  const blobs: Blob[] = [];
  let pieces: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  const handOver = (): void => {
    blobs.push(new Blob(pieces));
    pieces = [];
    size = 0;
  };
  const zip = createZip((piece) => {
    pieces.push(piece.slice());
    size += piece.length;
    if (size >= HANDED_OVER_BYTES) handOver();
  });
  return {
    add: zip.add,
    end(): Blob {
      zip.end();
      handOver();
      return new Blob(blobs, { type: 'application/zip' });
    },
  };
}
