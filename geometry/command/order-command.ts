/**
 * Checks an order that came as one ZIP: npm run -s order -- check ORDER.zip [--stock FILE] [--shop FILE]
 *
 * Exit status 0: every file is as it was written, and the files to cut by come out the same when they are made again.
 * 2: something is otherwise, a line for each file on stdout. 1: the file cannot be read, or is no order.
 */
import { checkOrder } from './check-order.ts';
import { bookOf, shopOf } from './read-files.ts';
import { Refusal } from './refusal.ts';
import { runCommand } from './run-command.ts';
import { splitArguments } from './split-arguments.ts';

const USAGE = 'npm run -s order -- check ORDER.zip [--stock FILE] [--shop FILE]';

await runCommand(async ([what, ...args]) => {
  const expected = { file: 'order', values: { '--stock': 'a file', '--shop': 'a file' }, flags: [], usage: USAGE };
  const { file, values } = splitArguments(args, expected);
  if (what !== 'check' || file === undefined) throw new Refusal(`Say which order to check. Use: ${USAGE}`);
  const [stock, shop] = [values.get('--stock'), values.get('--shop')];
  return checkOrder(file, await bookOf(stock), shop === undefined ? undefined : await shopOf(shop));
});
