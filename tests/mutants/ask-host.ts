import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { type Answer, type Ask, OUT_OF_WORK } from './ask.ts';
import { ROOT } from './sources.ts';

/** A test of which the host gave no sign so long by the clock is at a lock or a wait, whatever it costs. */
const LONGEST_WAIT_MS = 180_000;

/** Asks the host process, starting one where there is none. */
export class Host {
  #child: ChildProcess | undefined;
  #ended: Promise<number | null> = Promise.resolve(null);

  constructor(readonly reachFile: string) {}

  /** What came of it; `out of work` where a test did not end within what it may cost. */
  async ask(ask: Ask): Promise<Answer | 'out of work'> {
    const child = (this.#child ??= await this.#start());
    const answered = new Promise<Answer>((done) => child.once('message', (said) => done(said as Answer)));
    const late = setTimeout(() => child.kill('SIGKILL'), LONGEST_WAIT_MS);
    child.send(ask);
    const came = await Promise.race([answered, this.#ended]);
    clearTimeout(late);
    if (typeof came === 'object' && came !== null) return came;
    this.#child = undefined;
    if (came === OUT_OF_WORK || came === null) return 'out of work';
    throw new Error(`the process that runs the tests ended with ${came}`);
  }

  end(): void {
    this.#child?.kill('SIGKILL');
    this.#child = undefined;
  }

  async #start(): Promise<ChildProcess> {
    const child = fork(join(import.meta.dirname, 'host.ts'), [this.reachFile], {
      cwd: ROOT,
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    });
    this.#ended = once(child, 'exit').then(([status]) => status as number | null);
    await once(child, 'message');
    return child;
  }
}
