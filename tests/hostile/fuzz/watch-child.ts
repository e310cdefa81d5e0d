import { fork } from 'node:child_process';

export interface Ended {
  readonly at: number;
  readonly trouble?: { readonly kind: string; readonly why: string };
  readonly ms: number;
  readonly mb: number;
}

/** An input that takes longer than this on the clock hangs; the machine may be busy with other work. */
const LONGEST_MS = 60_000;
/** A child whose heap grows beyond this ends, and that is a crash of the input at hand. */
const HEAP_MB = 512;

/**
 * Runs child.ts over all its inputs; after one that hangs or ends the process it goes on behind it. In: what the child is
 * asked, without the number to begin at. Out: how each input ended.
 */
export async function watchChild(args: readonly string[]): Promise<readonly Ended[]> {
  const all: Ended[] = [];
  for (let from = 0; ;) {
    const stopped = await runFrom(args, from, all);
    if (stopped === undefined) return all;
    all.push({ at: stopped.at, trouble: { kind: stopped.kind, why: '' }, ms: 0, mb: 0 });
    from = stopped.at + 1;
  }
}

function runFrom(args: readonly string[], from: number, all: Ended[]) {
  return new Promise<{ readonly at: number; readonly kind: 'hang' | 'crash' } | undefined>((done, failed) => {
    const child = fork(`${import.meta.dirname}/child.ts`, [...args, String(from)], {
      execArgv: ['--import', 'tsx', `--max-old-space-size=${HEAP_MB}`],
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    });
    let begun = -1;
    let finished = false;
    let hung = false;
    let timer: NodeJS.Timeout | undefined;
    child.on('message', (message: { begin: number } | ({ end: number } & Omit<Ended, 'at'>)) => {
      clearTimeout(timer);
      if ('begin' in message) {
        begun = message.begin;
        finished = false;
        timer = setTimeout(() => {
          hung = true;
          child.kill('SIGKILL');
        }, LONGEST_MS);
      } else {
        finished = true;
        const { end, ...rest } = message;
        all.push({ at: end, ...rest });
      }
    });
    child.on('error', failed);
    child.on('exit', (code) => {
      clearTimeout(timer);
      if (code === 0 && (finished || begun < 0)) done(undefined);
      else if (begun < 0) failed(new Error(`the child could not begin: ${args.join(' ')}`));
      else done({ at: begun, kind: hung ? 'hang' : 'crash' });
    });
  });
}
