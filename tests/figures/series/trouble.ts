import { spawn } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Claim } from '../claim.ts';
import { inFolder, reportOf, RUN_ONCE, runOnce, type SeriesFolder, seriesRows } from './set-up.ts';

const BAD = 11;
const ROWS = 21;
const KILLED_AFTER = 6;

/** What happens to a row that cannot be filled in, and to a run that is killed. */
export const TROUBLE_CLAIMS: readonly Claim[] = [
  {
    name: 'bad-row',
    wanted: `1 of ${ROWS} fails, with its line, and the rest is made`,
    async measure() {
      const rows = await inFolder(seriesRows(ROWS, BAD), (folder) => {
        runOnce(folder);
        return reportOf(folder);
      });
      const failed = rows.filter((r) => r.verdict === 'failed');
      const made = rows.filter((r) => r.files.length > 0).length;
      const ok = failed.length === 1 && failed[0]!.line === BAD + 1 && failed[0]!.reason !== '' && made === ROWS - 1;
      return { value: `line ${failed.map((r) => r.line).join(', ')} fails; ${made} rows made`, unit: '', ok };
    },
  },
  {
    name: 'resume',
    wanted: 'no row made twice after a kill, and the same bytes as without one',
    async measure() {
      const whole = await inFolder(seriesRows(ROWS), (folder) => {
        runOnce(folder);
        return packed(folder);
      });
      return inFolder(seriesRows(ROWS), async (folder) => {
        await killAfter(folder, KILLED_AFTER);
        const before = timesOf(folder);
        runOnce(folder);
        const again = [...before].filter(([file, time]) => statSync(join(folder.out, file)).mtimeMs !== time).length;
        const marks = journalOf(folder);
        const twice = marks.length - new Set(marks).size;
        const same = packed(folder).equals(whole);
        return {
          value: `killed after ${before.size / 4} rows, ${again + twice} made twice, archive ${same ? 'the same' : 'differs'}`,
          unit: '',
          ok: before.size > 0 && before.size / 4 < ROWS && again + twice === 0 && same && marks.length === ROWS,
        };
      });
    },
  },
];

/** Kills the run, hard, as soon as so many rows are in its journal. */
function killAfter(folder: SeriesFolder, rows: number): Promise<void> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [...RUN_ONCE, folder.design, folder.csv, folder.out], { stdio: 'ignore' });
    const watch = setInterval(() => {
      if (journalOf(folder).length >= rows) child.kill('SIGKILL');
    }, 5);
    child.on('exit', () => {
      clearInterval(watch);
      resolve();
    });
  });
}

/** Marks of the rows that are done. */
function journalOf({ out }: SeriesFolder): string[] {
  const path = join(out, 'series.journal');
  if (!existsSync(path)) return [];
  const lines = readFileSync(path, 'utf8').split('\n').slice(0, -1);
  return lines.map((line) => (JSON.parse(line) as { mark: string }).mark);
}

/** When each file of a row that is done was written. */
function timesOf(folder: SeriesFolder): Map<string, number> {
  const lines = readFileSync(join(folder.out, 'series.journal'), 'utf8').split('\n').slice(0, -1);
  const files = lines.flatMap((line) => (JSON.parse(line) as { report: { files: string[] } }).report.files);
  return new Map(files.map((file) => [file, statSync(join(folder.out, file)).mtimeMs]));
}

function packed({ out }: SeriesFolder): Buffer {
  return readFileSync(join(out, 'series.zip'));
}
