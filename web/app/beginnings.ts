import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';

const FILES = import.meta.glob<string>('../demo/*.json', { query: '?raw', import: 'default', eager: true });

/** The demo designs, which are also what a customer may begin with. A test reads every one of them. */
export const BEGINNINGS: readonly Design[] = Object.values(FILES).flatMap((text) => {
  const read = readDesign(text);
  return 'design' in read ? [read.design] : [];
});
