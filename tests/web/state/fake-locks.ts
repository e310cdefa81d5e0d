/** The part of the Web Locks API that the page uses, by the standard's words (W3C Web Locks API, sections 4 and 5). */
export function fakeLocks(): LockManager {
  interface Held {
    stolen(): void;
  }
  const held = new Map<string, Held>();
  const waiting = new Map<string, (() => void)[]>();

  async function request(
    name: string,
    options: LockOptions,
    run: (lock: Lock | null) => Promise<void> | undefined,
  ): Promise<void> {
    if (held.has(name) && options.steal) held.get(name)?.stolen();
    else if (held.has(name) && options.ifAvailable) {
      await run(null);
      return;
    } else if (held.has(name)) {
      await new Promise<void>((resolve, reject) => {
        const queue = waiting.get(name) ?? [];
        waiting.set(name, queue);
        queue.push(resolve);
        options.signal?.addEventListener('abort', () => {
          queue.splice(queue.indexOf(resolve), 1);
          reject(new DOMException('waited in vain', 'AbortError'));
        });
      });
    }
    await new Promise<void>((resolve, reject) => {
      const me: Held = { stolen: () => reject(new DOMException('stolen', 'AbortError')) };
      held.set(name, me);
      void Promise.resolve(run({ name, mode: 'exclusive' })).then(() => {
        if (held.get(name) === me) {
          held.delete(name);
          waiting.get(name)?.shift()?.();
        }
        resolve();
      });
    });
  }
  return { request, query: () => Promise.resolve({}) } as unknown as LockManager;
}
