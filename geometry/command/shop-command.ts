/**
 * A shop's own file at the command line:
 *
 *   npm run -s shop -- check FILE [--stock FILE]                  says what is wrong with it, and in which line
 *   npm run -s shop -- publish FILE [--stock FILE] --out FOLDER   writes shop.json, and stock.json where one is named,
 *                                                                 without what only the shop should know
 *
 * Exit status 0, or 1 with one line on stderr.
 */
import { publishShop } from './publish-shop.ts';
import { runCommand } from './run-command.ts';

await runCommand(async (args) => {
  for (const line of await publishShop(args)) console.log(line);
  return 0;
});
