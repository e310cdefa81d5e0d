import type { Rolldown } from 'vite';

type Group = Rolldown.CodeSplittingGroup;

/**
 * What comes over the wire as one file, by modules: all that the first page needs, and all that the questions of a
 * beginning need on top of it. Left alone, they come as fifty small files, and a phone asks for six at a time.
 */
export function visitChunks(root: string): readonly Group[] {
  return [
    { name: reachedFrom(`${root}app/start.tsx`, 'start'), priority: 1 },
    { name: reachedFrom(`${root}design/beginnings/QuestionSheet.tsx`, 'ask'), priority: 0 },
  ];
}

/** The worker that makes plates, the same way; what comes later in it is shared with it. */
export function workerChunks(root: string): readonly Group[] {
  return [{ name: reachedFrom(`${root}worker/plate-worker.ts`, 'plate'), priority: 1 }];
}

/** A list of all icons there are: of these, those that are used come along by themselves. */
const BARREL = /\/lucide-react\/dist\/esm\/lucide-react\.mjs$/;

/** Takes what an entry imports at once and not later, itself included. */
function reachedFrom(entry: string, chunk: string): Rolldown.CodeSplittingNameFunction {
  const known = new WeakMap<object, ReadonlySet<string>>();
  return (id, context) => {
    let reached = known.get(context);
    if (!reached) {
      const found = new Set([entry]);
      for (const each of found)
        if (!BARREL.test(each)) for (const next of context.getModuleInfo(each)?.importedIds ?? []) found.add(next);
      known.set(context, (reached = found));
    }
    return reached.has(id) ? chunk : null;
  };
}
