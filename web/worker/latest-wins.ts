/** Does one job; asks stale() after every wait and gives up when it says yes. */
export type Work<Job> = (job: Job, stale: () => boolean) => Promise<void>;

export interface LatestWins<Job> {
  /** Begins at once when nothing runs; otherwise takes the place of whatever was waiting. */
  submit(job: Job): void;
  /** Nothing runs and nothing waits. */
  idle(): boolean;
  /** Resolves as soon as nothing runs and nothing waits. */
  whenIdle(): Promise<void>;
}

/**
 * One job at a time; of those that come meanwhile only the newest is kept, and the one that runs is told it is stale.
 * A job that throws ends like any other: its own work must have reported what happened.
 */
export function createLatestWins<Job>(work: Work<Job>): LatestWins<Job> {
  let running = false;
  let waiting: { readonly job: Job } | undefined;
  let newest = 0;
  let sleepers: (() => void)[] = [];

  async function run(first: Job): Promise<void> {
    running = true;
    let next: { readonly job: Job } | undefined = { job: first };
    while (next !== undefined) {
      const mine = newest;
      try {
        await work(next.job, () => mine !== newest);
      } catch {
        // reported by the work itself
      }
      next = waiting;
      waiting = undefined;
    }
    running = false;
    const wake = sleepers;
    sleepers = [];
    for (const sleeper of wake) sleeper();
  }

  return {
    submit(job) {
      newest += 1;
      if (running) waiting = { job };
      else void run(job);
    },
    idle: () => !running,
    whenIdle: () => (running ? new Promise((resolve) => sleepers.push(resolve)) : Promise.resolve()),
  };
}
