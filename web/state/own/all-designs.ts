import { newId } from './new-id.ts';
import type { Shelf } from './shelf.ts';

/** Says what the file is; the number goes up when an older page could not read it. */
const FORMAT = 'bridgehead-designs';
const VERSION = 1;
/** A thousand designs with drawings; a larger file is none of ours. */
export const LARGEST_BYTES = 200_000_000;

interface Packed {
  readonly title: string;
  readonly changedMs: number;
  /** The text of the design file, also of one that cannot be read here. */
  readonly text: string;
}

/** What became of the designs of a file. */
export interface TakenIn {
  readonly taken: number;
  /** They were here already, letter by letter. */
  readonly known: number;
  /** They could not be read, and were kept out. */
  readonly refused: number;
}

/** All own designs that are not in the bin, as one JSON text. Rejects where the store does. */
export async function packAll(shelf: Shelf): Promise<{ readonly text: string; readonly count: number }> {
  const designs: Packed[] = [];
  for (const { id, title, changedMs, binnedMs } of await shelf.cards()) {
    const stored = binnedMs === undefined ? await shelf.read(id) : undefined;
    if (stored) designs.push({ title, changedMs, text: stored.text });
  }
  return {
    text: `${JSON.stringify({ format: FORMAT, version: VERSION, designs }, undefined, 1)}\n`,
    count: designs.length,
  };
}

/**
 * Adds the designs of such a file to those that are here; none of these is changed. undefined: the text is no such
 * file. Rejects where the store does; what was added by then stays.
 */
export async function takeInAll(text: string, shelf: Shelf): Promise<TakenIn | undefined> {
  const designs = readPacked(text);
  if (!designs) return undefined;
  const { readDesign } = await import('../../../geometry/design/read-design.ts');
  const here = new Set<string>();
  for (const { id, binnedMs } of await shelf.cards()) {
    const stored = binnedMs === undefined ? await shelf.read(id) : undefined;
    if (stored) here.add(stored.text);
  }
  let [taken, known, refused] = [0, 0, 0];
  for (const packed of designs) {
    const read = packed && readDesign(packed.text);
    if (!packed || !read || !('design' in read)) refused++;
    else if (here.has(packed.text)) known++;
    else {
      const { changedMs, text } = packed;
      await shelf.write({ id: newId(), title: read.design.title, text, changedMs, after: undefined });
      here.add(text);
      taken++;
    }
  }
  return { taken, known, refused };
}

/** An entry that is none is undefined. */
function readPacked(text: string): readonly (Packed | undefined)[] | undefined {
  try {
    const { format, version, designs } = JSON.parse(text) as Record<string, unknown>;
    if (format !== FORMAT || version !== VERSION || !Array.isArray(designs)) return undefined;
    return designs.map((entry: unknown) => {
      const { title, changedMs, text } = (entry ?? {}) as Record<string, unknown>;
      if (typeof title !== 'string' || typeof text !== 'string') return undefined;
      const isTime = typeof changedMs === 'number' && Number.isFinite(changedMs) && changedMs >= 0;
      return { title, text, changedMs: isTime ? changedMs : 0 };
    });
  } catch {
    return undefined;
  }
}
