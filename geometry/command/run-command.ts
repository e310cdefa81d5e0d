import { Refusal } from './refusal.ts';

/** Runs a command on the words after its name; its exit status is what work gives, or 1 with the refusal on stderr. */
export async function runCommand(work: (args: readonly string[]) => Promise<number>): Promise<void> {
  try {
    process.exitCode = await work(process.argv.slice(2));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
