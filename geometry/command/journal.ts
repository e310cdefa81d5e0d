import { appendFile, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { RowReport } from './series-report.ts';
import { cannotWrite } from './write-files.ts';

/** Which rows are done, a line each, added when all files of the row stand in the folder under their names. */
export interface Journal {
  /** What an earlier run said of a row of this mark, if all its files are still there. */
  done(mark: string): RowReport | undefined;
  add(mark: string, report: RowReport): Promise<void>;
}

const NAME = 'series.journal';

/** A last line that was cut off in the middle is a row that is not done. manner: what else decides which files a row gets. */
export async function openJournal(folder: string, manner: string): Promise<Journal> {
  const path = join(folder, NAME);
  const [text, there] = [await readFile(path, 'utf8').catch(() => ''), new Set(await readdir(folder))];
  const known = new Map<string, RowReport>();
  for (const line of text.split('\n')) {
    const entry = entryOf(line);
    if (entry?.manner === manner) known.set(entry.mark, entry.report);
  }
  // What a cut-off line left must not run into the next.
  if (text !== '' && !text.endsWith('\n')) await writeFile(path, text.slice(0, text.lastIndexOf('\n') + 1));
  return {
    done(mark) {
      const report = known.get(mark);
      return report?.files.every((name) => there.has(name)) ? report : undefined;
    },
    async add(mark, report) {
      await appendFile(path, `${JSON.stringify({ mark, manner, report })}\n`).catch((error: unknown) => {
        throw cannotWrite(path, error);
      });
    },
  };
}

interface Entry {
  readonly mark: string;
  readonly manner: string;
  readonly report: RowReport;
}

function entryOf(line: string): Entry | undefined {
  try {
    return JSON.parse(line) as Entry;
  } catch {
    return undefined;
  }
}
