import { join } from 'node:path';
import { type Claim, once, rounded } from '../claim.ts';
import { type Packed, readByPython } from './read-by-python.ts';
import { inFolder, reportOf, runOnce, type SeriesRun, seriesRows } from './set-up.ts';

const COUNTS = [10, 100, 1000] as const;
/** DXF and SVG of two plates. */
const FILES_A_ROW = 4;

/** Rows that differ by their number, two plates each, bridged, checked, written and packed: what they take. */
export const GROWTH_CLAIMS: readonly Claim[] = [
  {
    name: 'thousand-rows',
    wanted: 'time a row at 1,000 at most 1.5 times that at 100',
    timed: true,
    async measure() {
      const runs = await allRuns();
      const each = runs.map((run) => (run.seconds * 1000) / run.rows);
      const ratio = each[2]! / each[1]!;
      const said = runs.map((run, i) => `${run.rows} rows ${rounded(run.seconds)} s, ${rounded(each[i]!)} ms a row`);
      return { value: `${said.join('; ')}; ratio ${rounded(ratio)}`, unit: '', ok: ratio <= 1.5 };
    },
  },
  {
    name: 'thousand-rows-memory',
    wanted: 'peak at 1,000 rows at most 1.5 times that at 100',
    async measure() {
      const runs = await allRuns();
      const ratio = runs[2]!.peakMb / runs[1]!.peakMb;
      const peaks = runs.map((run) => Math.round(run.peakMb)).join(', ');
      return { value: `${peaks} MB at 10, 100, 1,000 rows; ratio ${rounded(ratio)}`, unit: '', ok: ratio <= 1.5 };
    },
  },
  {
    name: 'thousand-rows-in-zip',
    wanted: 'all files of 1,000 rows come whole out of the archive, read by another reader (zipfile of Python)',
    async measure() {
      const { packed, ready } = (await allRuns())[2]!;
      if ('absent' in packed) return { value: 'skipped', unit: `(${packed.absent})`, ok: true };
      const unit = `files of ${ready} rows, ${packed.damaged} damaged`;
      const ok = ready === 1000 && packed.files === 1000 * FILES_A_ROW && packed.damaged === 0;
      return { value: packed.files, unit, ok };
    },
  },
];

const allRuns = once(async () => {
  const runs: (SeriesRun & { rows: number; ready: number; packed: Packed })[] = [];
  for (const rows of COUNTS) {
    runs.push(
      await inFolder(seriesRows(rows), (folder) => {
        const run = runOnce(folder);
        const ready = reportOf(folder).filter((r) => r.reason === '').length;
        return { ...run, rows, ready, packed: readByPython(join(folder.out, 'series.zip')) };
      }),
    );
  }
  return runs;
});
