import type { Design } from '../../../geometry/design/schema.ts';
import type { Refused } from '../../../geometry/sentences/wording.ts';
import type { CardList } from './card-list.ts';

/** One of the own designs as it is kept; undefined where it is gone. */
export async function readOwn(
  list: Pick<CardList, 'textOf'>,
  id: string,
): Promise<{ readonly design: Design } | Refused | undefined> {
  const text = await list.textOf(id);
  if (text === undefined) return undefined;
  const { readDesign } = await import('../../../geometry/design/read-design.ts');
  return readDesign(text);
}
