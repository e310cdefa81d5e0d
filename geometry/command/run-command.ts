import { oneLine } from '../files/plain-text.ts';
import { Refusal } from './refusal.ts';

/**
 * Runs a command on the words after its name; its exit status is what work gives, or 1 with one line on stderr. That line is
 * the refusal, or of a mistake of ours its message; with BRIDGEHEAD_TRACE set, where it came from too.
 */
export async function runCommand(work: (args: readonly string[]) => Promise<number>): Promise<void> {
  // Whoever reads our lines may stop reading, as `head` does: that ends the command and is no fault.
  for (const stream of [process.stdout, process.stderr])
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      process.exit(process.exitCode ?? 0);
    });
  try {
    process.exitCode = await work(process.argv.slice(2));
  } catch (error) {
    process.exitCode = 1;
    console.error(error instanceof Refusal ? error.message : mistakeOf(error));
  }
}

function mistakeOf(error: unknown): string {
  if (process.env['BRIDGEHEAD_TRACE'] !== undefined && error instanceof Error) return error.stack ?? error.message;
  const why = oneLine(error instanceof Error ? error.message : String(error), 200);
  return `This could not be worked out (${why}). Please report it, with the file it was about.`;
}
