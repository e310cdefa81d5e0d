import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Design } from '../../../geometry/design/schema.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import type { RowReport } from '../../../geometry/command/series-report.ts';

/** The demo's cask series with its number and lot left to rows. */
function seriesDesign(): string {
  const demo = JSON.parse(
    readFileSync(new URL('../../../web/demo/cask-series.json', import.meta.url), 'utf8'),
  ) as Design;
  const elements = demo.elements.map((e) => (e.id === 'number' && 'text' in e ? { ...e, text: '{number}' } : e));
  return designText({
    ...demo,
    title: 'Cask {number}',
    elements,
    order: { ...demo.order, reference: 'Lot {lot}' },
  });
}

/** As a spreadsheet of a country with decimal commas exports it; empty: the number of this row is missing. */
export function seriesRows(count: number, empty?: number): string {
  const rows = Array.from({ length: count }, (_, i) => `${i + 1 === empty ? '' : i + 1};L${(i + 1) % 7}\r\n`);
  return `\uFEFFnumber;lot\r\n${rows.join('')}`;
}

export interface SeriesFolder {
  readonly design: string;
  readonly csv: string;
  readonly out: string;
}

/** A folder with design and rows in it, gone when the work is done. */
export async function inFolder<T>(rows: string, work: (folder: SeriesFolder) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'series-'));
  try {
    const paths = { design: join(folder, 'form.json'), csv: join(folder, 'rows.csv'), out: join(folder, 'out') };
    writeFileSync(paths.design, seriesDesign());
    writeFileSync(paths.csv, rows);
    return await work(paths);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export const RUN_ONCE = ['--import', 'tsx', new URL('./run-once.ts', import.meta.url).pathname];

export interface SeriesRun {
  readonly status: number;
  readonly seconds: number;
  readonly peakMb: number;
}

/** One run to its end, in a process of its own. */
export function runOnce({ design, csv, out }: SeriesFolder): SeriesRun {
  const run = spawnSync(process.execPath, [...RUN_ONCE, design, csv, out], { encoding: 'utf8', maxBuffer: 1 << 26 });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout.trim().split('\n').at(-1) ?? '') as SeriesRun;
}

export function reportOf({ out }: SeriesFolder): RowReport[] {
  return (JSON.parse(readFileSync(join(out, 'series.json'), 'utf8')) as { rows: RowReport[] }).rows;
}
