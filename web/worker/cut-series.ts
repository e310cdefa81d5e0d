import { loadFaces } from '../../fonts/browser-faces.ts';
import { createZip } from '../../geometry/adapters/zip-stream.ts';
import { fillDesign } from '../../geometry/series/fill-design.ts';
import { readRows } from '../../geometry/series/read-rows.ts';
import { runSeries, type SeriesStep } from '../../geometry/series/run-series.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { writeDxf } from '../../geometry/files/dxf.ts';
import { plateFileNames, safePart } from '../../geometry/files/names.ts';
import { writeSvg } from '../../geometry/files/svg.ts';
import type { SolveStore } from '../../geometry/solve-store.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { SeriesEnd, SeriesHead, SeriesProgress, SeriesRow } from './cut-api.ts';

/** What the table holds, and whether it goes with the design. */
export function seriesHead(design: Design, bytes: Uint8Array): SeriesHead {
  const rows = readRows(bytes);
  if ('problem' in rows) return { refused: rows };
  const form = fillDesign(design, rows.columns);
  if ('problem' in form) return { refused: form };
  const [first] = rows.rows.flatMap((row) => {
    const filled = form.fill(row);
    return 'problem' in filled ? [] : [filled.name];
  });
  return { columns: rows.columns, rows: rows.rows.length, ...(first !== undefined && { first }) };
}

/** How often the page is told, ms: a bar that moves, not a flood. */
const TOLD_EVERY_MS = 120;

/** A design for every row, into one archive: DXF and SVG of its plates; rows that fail are told and left out. */
export async function makeSeries(
  design: Design,
  bytes: Uint8Array,
  tools: { readonly store: SolveStore; readonly book: StockBook; readonly signal: AbortSignal },
  told: (progress: SeriesProgress) => void,
): Promise<SeriesEnd> {
  const rows = readRows(bytes);
  if ('problem' in rows) return { refused: rows };
  const { faces } = await loadFaces(design);
  const run = runSeries(design, rows, { ...tools, faces });
  if ('problem' in run) return { refused: run };
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  const zip = createZip((piece) => pieces.push(piece.slice()));
  const failed: SeriesRow[] = [];
  let [done, lastTold] = [0, 0];
  for await (const step of run.steps) {
    const fault = addRow(step, zip.add);
    if (fault) failed.push(fault);
    done++;
    if (performance.now() - lastTold < TOLD_EVERY_MS) continue;
    lastTold = performance.now();
    told({ done, of: rows.rows.length, failed });
    // lets a press on Cancel come in
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
  zip.end();
  told({ done, of: rows.rows.length, failed });
  const name = `${safePart(design.title, 'series')}-series.zip`;
  const whole = new Uint8Array(await new Blob(pieces).arrayBuffer());
  return {
    file: { name, type: 'application/zip', bytes: whole },
    made: done - failed.length,
    of: rows.rows.length,
    cancelled: done < rows.rows.length,
  };
}

function addRow(
  { line, of, outcome }: SeriesStep,
  add: (name: string, bytes: Uint8Array) => void,
): SeriesRow | undefined {
  if (outcome.kind === 'failed') return { line, name: '', reason: outcome.reason };
  if (outcome.kind === 'known') return undefined;
  const { design, planned, name } = outcome;
  const stop = planned.flatMap(({ plate }) => plate.findings).find((f) => f.severity === 'stop');
  if (stop) return { line, name, reason: { sentence: stop.sentence, ...(stop.words && { words: stop.words }) } };
  // Names begin with the line, so that a folder lists them in the order of the table.
  const row = String(line).padStart(Math.max(4, String(of + 1).length), '0');
  const plates = planned.map((p) => p.plate);
  const text = new TextEncoder();
  for (const kind of ['dxf', 'svg'] as const) {
    const names = plateFileNames(design.title, plates, kind);
    const write = kind === 'dxf' ? writeDxf : writeSvg;
    planned.forEach(({ plate, plan }, i) => add(`${row}-${names[i]!}`, text.encode(write(design, plate, plan))));
  }
  return undefined;
}
