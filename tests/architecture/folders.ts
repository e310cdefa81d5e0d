import type { Import } from './read-imports.ts';

/** One folder that reaches into another, and by which imports. */
export interface Arrow {
  readonly from: string;
  readonly to: string;
  readonly imports: readonly Import[];
}

/**
 * Every arrow between two folders of the same parent, with all that lies in them, and between a folder's own files and
 * a folder in it. The headless commands are the roof of the kernel and count apart from it.
 */
export function folderArrows(imports: readonly Import[]): Arrow[] {
  const arrows = new Map<string, Arrow & { imports: Import[] }>();
  for (const one of imports) {
    if (one.kind !== 'file') continue;
    const [from, to] = partedAt(one.from, one.to);
    if (from === to) continue;
    const key = `${from} > ${to}`;
    const arrow = arrows.get(key) ?? { from, to, imports: [] };
    arrow.imports.push(one);
    arrows.set(key, arrow);
  }
  return [...arrows.values()];
}

/** A sentence for each two folders that import each other, types included. */
export function mutualFolders(imports: readonly Import[]): string[] {
  const arrows = folderArrows(imports);
  return arrows
    .filter(({ from, to }) => from < to)
    .flatMap((arrow) => {
      const back = arrows.find(({ from, to }) => from === arrow.to && to === arrow.from);
      if (!back) return [];
      const [there, here] = [arrow.imports[0], back.imports[0]];
      return [
        `${arrow.from} and ${arrow.to} import each other: ${there?.from} > ${there?.to}, ${here?.from} > ${here?.to}`,
      ];
    });
}

/** A sentence for each folder that holds more files than it may. */
export function fullFolders(paths: readonly string[], most: number): string[] {
  const counts = new Map<string, number>();
  for (const path of paths) counts.set(folderOf(path), (counts.get(folderOf(path)) ?? 0) + 1);
  return [...counts].filter(([, n]) => n > most).map(([folder, n]) => `${folder} holds ${n} files: part it`);
}

export function folderOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf('/')));
}

/** The two folders in which two files part: of one parent, or one within the other. */
function partedAt(a: string, b: string): [string, string] {
  const [from, to] = [unitOf(a), unitOf(b)];
  let same = 0;
  while (same < from.length && same < to.length && from[same] === to[same]) same++;
  return [from.slice(0, same + 1).join('/'), to.slice(0, same + 1).join('/')];
}

/** Folders on the way to a file, from the top. */
function unitOf(path: string): string[] {
  const parts = path.split('/').slice(0, -1);
  return path.startsWith('geometry/command/') ? ['geometry/command'] : parts;
}
