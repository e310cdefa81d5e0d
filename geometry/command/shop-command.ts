/**
 * A shop's own file at the command line:
 *
 *   npm run -s shop -- check FILE [--stock FILE]                  says what is wrong with it, and in which line
 *   npm run -s shop -- publish FILE [--stock FILE] --out FOLDER   writes shop.json, and stock.json where one is named,
 *                                                                 without what only the shop should know
 *
 *   npm run -s shop -- key --out FOLDER                           makes a key to sign orders by, and prints its public half
 *
 * Exit status 0, or 1 with one line on stderr.
 */
import { makeOrderKey } from './order-key.ts';
import { publishShop } from './publish-shop.ts';
import { runCommand } from './run-command.ts';

await runCommand(async (args) => {
  const [verb, out, folder, ...more] = args;
  const isKey = verb === 'key' && out === '--out' && folder !== undefined && more.length === 0;
  for (const line of await (isKey ? makeOrderKey(folder) : publishShop(args))) console.log(line);
  return 0;
});
