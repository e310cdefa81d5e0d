/** The Nth of M parts of a long run: `--part N/M`. */
export interface Part {
  readonly nth: number;
  readonly of: number;
}

/** Read from the command line; undefined when the whole is wanted. Throws when it is no such part. */
export function wantedPart(args: readonly string[] = process.argv): Part | undefined {
  const at = args.indexOf('--part');
  if (at < 0) return undefined;
  const [nth = 0, of = 0] = (args[at + 1] ?? '').split('/').map(Number);
  if (!Number.isInteger(nth) || !Number.isInteger(of) || nth < 1 || nth > of) {
    throw new Error('--part takes N/M, as in 2/8.');
  }
  return { nth, of };
}

/** Neighbours stay together, since they share what was worked out; the parts together are the whole. */
export function partOf<T>(all: readonly T[], part: Part | undefined): readonly T[] {
  if (!part) return all;
  const cut = (n: number): number => Math.round((all.length * n) / part.of);
  return all.slice(cut(part.nth - 1), cut(part.nth));
}
