import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';

const FILES = import.meta.glob<string>('../demo/*.json', { query: '?raw', import: 'default', eager: true });

/** The one that shows most comes first: the page opens with it. */
const FIRST = ['makers-head', 'golden-wedding', 'cask-series'];

/** The demo designs, which are also what a customer may begin with. A test reads every one of them. */
export const BEGINNINGS: readonly Design[] = inOrder(FILES).flatMap((text) => {
  const read = readDesign(text);
  return 'design' in read ? [read.design] : [];
});

function inOrder(files: Record<string, string>): string[] {
  const place = (path: string): number => {
    const at = FIRST.findIndex((name) => path.endsWith(`/${name}.json`));
    return at < 0 ? FIRST.length : at;
  };
  return Object.entries(files)
    .sort(([a], [b]) => place(a) - place(b) || (a < b ? -1 : 1))
    .map(([, text]) => text);
}
