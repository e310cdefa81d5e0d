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
import { Refusal } from './refusal.ts';

async function run(args: readonly string[]): Promise<number> {
  try {
    for (const line of await publishShop(args)) console.log(line);
    return 0;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    console.error(error.message);
    return 1;
  }
}

process.exitCode = await run(process.argv.slice(2));
