/**
 * Checks an order that came as one ZIP: npm run -s order -- check ORDER.zip [--stock FILE]
 *
 * Exit status 0: every file is as it was written, and the files to cut by come out the same when they are made again.
 * 2: something is otherwise, a line for each file on stdout. 1: the file cannot be read, or is no order.
 */
import { checkOrder } from './check-order.ts';
import { bookOf } from './read-files.ts';
import { Refusal } from './refusal.ts';
import { runCommand } from './run-command.ts';

const USAGE = 'npm run -s order -- check ORDER.zip [--stock FILE]';

await runCommand(async ([what, file, option, stock, ...more]) => {
  const isStock = option === undefined || (option === '--stock' && stock !== undefined);
  if (what !== 'check' || file === undefined || file.startsWith('-') || !isStock || more.length > 0) {
    throw new Refusal(`Say which order to check. Use: ${USAGE}`);
  }
  return checkOrder(file, await bookOf(stock));
});
