/**
 * A design for every row of a table: files, one report, and if wanted all of it in one ZIP.
 *
 * A row that fails is reported with its line and reason, and the rest goes on. What is done is kept in a journal, so that
 * a run that was ended in the middle goes on where it stood. Exit status 2 when a row failed, 130 when it was cancelled.
 */
import { appendFile } from 'node:fs/promises';
import { join } from 'node:path';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../design/schema.ts';
import { printInName, showFingerprint } from '../design/show-fingerprint.ts';
import { oneLine } from '../files/plain-text.ts';
import { type Rows, signsOf } from '../series/read-rows.ts';
import { type MadeRow, runSeries, type SeriesStep } from '../series/run-series.ts';
import { createStore } from '../pipeline/solve-store.ts';
import type { StockBook } from '../stock/stock-book.ts';
import type { Asked } from './asked.ts';
import { openJournal, type Journal } from './journal.ts';
import { cutFiles, specSheet } from './make-order.ts';
import { Refusal } from './refusal.ts';
import { reportHead, reportJson, reportLine, type RowReport } from './series-report.ts';
import { cannotWrite, writerFor, type Writer } from './write-files.ts';
import { zipFolder } from './zip-folder.ts';

const CANCELLED = 130;
/** Kept from row to row: what a few designs have. What a row alone has is soon let go. */
const KEPT = { shapes: 300, units: 250 };
/** Rows between two lines that say how far it is. */
const SAID_EVERY = 100;

export async function makeSeries(
  asked: Asked,
  design: Design,
  rows: Rows,
  book: StockBook,
  signal: AbortSignal,
): Promise<number> {
  const { faces, problems } = await loadFaces(design, signsOf(rows));
  for (const { problem } of problems) console.log(`font: ${oneLine(problem, 500)}`);
  const write = await writerFor(asked.folder);
  const journal = await openJournal(
    asked.folder,
    `${asked.evenSo} ${asked.sheets}${asked.paper === 'a4' ? '' : ` ${asked.paper}`}`,
  );
  const isDone = (mark: string) => journal.done(mark) !== undefined;
  const run = runSeries(design, rows, { faces, store: createStore(KEPT), book, signal, isDone });
  if ('problem' in run) throw new Refusal(oneLine(run.problem, 500));

  const table = join(asked.folder, 'series.csv');
  await write('series.csv', reportHead());
  const reports: RowReport[] = [];
  let known = 0;
  for await (const step of run.steps) {
    if (step.outcome.kind === 'known') known++;
    const report = await reportOf(step, { asked, book, write, journal });
    reports.push(report);
    await appendFile(table, reportLine(report)).catch((error: unknown) => {
      throw cannotWrite(table, error);
    });
    say(step, report);
  }
  await write('series.json', reportJson(design.title, reports));
  const failed = reports.filter((r) => r.reason !== '').length;
  console.log(
    `${reports.length} of ${rows.rows.length} rows, ${reports.length - known} looked at now, ${failed} with a reason not to cut`,
  );
  if (signal.aborted) {
    console.log('Cancelled. The same command goes on where this one ended.');
    return CANCELLED;
  }
  if (asked.zip) {
    await zipFolder(asked.folder, 'series.zip', [...reports.flatMap((r) => r.files), 'series.csv', 'series.json']);
    console.log('series.zip');
  }
  return failed > 0 ? 2 : 0;
}

interface Desk {
  readonly asked: Asked;
  readonly book: StockBook;
  readonly write: Writer;
  readonly journal: Journal;
}

async function reportOf({ line, of, outcome }: SeriesStep, desk: Desk): Promise<RowReport> {
  if (outcome.kind === 'failed') {
    return { line, name: '', fingerprint: '', verdict: 'failed', reason: outcome.reason.problem, files: [] };
  }
  const done = desk.journal.done(outcome.mark);
  if (outcome.kind === 'known') {
    if (!done) throw new Error(`row of line ${line} is known and not in the journal`);
    return done;
  }
  const files = await writeRow(line, of, outcome, desk);
  const stops = outcome.planned.flatMap(({ plate }) => plate.findings.filter((f) => f.severity === 'stop'));
  const report: RowReport = {
    line,
    name: outcome.name,
    fingerprint: showFingerprint(outcome.planned[0]?.plate.fingerprint ?? ''),
    verdict: outcome.verdict,
    reason: [...new Set(stops.map((f) => f.sentence))].join(' '),
    files,
  };
  await desk.journal.add(outcome.mark, report);
  return report;
}

/** Names begin with the line, so that a folder lists them in the order of the table. */
async function writeRow(
  line: number,
  of: number,
  { design, planned, verdict }: MadeRow,
  { asked, book, write }: Desk,
): Promise<string[]> {
  if (verdict === 'stop' && !asked.evenSo) return [];
  const row = String(line).padStart(Math.max(4, String(of + 1).length), '0');
  const names: string[] = [];
  for (const { name, text } of cutFiles(design, planned)) {
    names.push(`${row}-${name}`);
    await write(`${row}-${name}`, text);
  }
  if (asked.sheets) {
    const name = `${row}-spec-sheet-${printInName(planned[0]?.plate.fingerprint ?? 'draft')}.pdf`;
    names.push(name);
    await write(name, await specSheet(design, planned, book, asked.paper));
  }
  return names;
}

function say({ number, of }: SeriesStep, { line, name, reason }: RowReport): void {
  if (reason !== '')
    console.log(`line ${line}${name === '' ? '' : ` (${oneLine(name, 60)})`}: ${oneLine(reason, 500)}`);
  if (number % SAID_EVERY === 0 || number === of) console.log(`${number} of ${of}`);
}
