/**
 * The headless command: npm run -s make -- DESIGN.json --out FOLDER [--stock FILE] [--today YYYY-MM-DD] [--even-so]
 *   [--approved-only] [--order] [--cut net|path|leads]
 *
 * Writes a DXF and an SVG for every plate, spec-sheet.pdf and findings.json. Exit status 0; 2 when a finding stops the
 * cut (then only findings.json is written, unless --even-so), or when it is not what was approved and --approved-only
 * is said; 1 when the command or the design cannot be read, or a file cannot be written: one line on stderr says where.
 *
 * With --cut net, path, leads or joined all its plates are put on sheets of the stock too (command/make-sheets.ts); one that finds
 * none makes the status 2.
 *
 * With --order all of it also as an order in one ZIP, which `npm run -s order -- check` looks over.
 *
 * With --csv ROWS.csv it makes a design for every row by filling the {column} places (command/make-series.ts), with
 * --sheets a spec sheet for each too, with --zip all of it in one archive as well.
 */
import { readArguments } from './asked.ts';
import { makeOrder } from './make-order.ts';
import { makeSeries } from './make-series.ts';
import { bookOf, designOf, rowsOf } from './read-files.ts';
import { runCommand } from './run-command.ts';

await runCommand(async (args) => {
  const asked = readArguments(args);
  const [design, book] = [await designOf(asked.file), await bookOf(asked.stock)];
  if (asked.csv === undefined) return makeOrder(asked, design, book, asked.today);
  const stop = new AbortController();
  // Ends between two rows, so that nothing is left half done.
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => stop.abort());
  return makeSeries(asked, design, await rowsOf(asked.csv), book, stop.signal);
});
