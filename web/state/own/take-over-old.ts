import { beginningOf } from '../../../geometry/sentences/shorten.ts';
import type { Shelf } from './shelf.ts';

/** What of earlier versions' store is asked: idb-keyval's functions in the page, a fake in tests. */
export interface OldKeep {
  get(key: string): Promise<unknown>;
  del(key: string): Promise<void>;
}

const DESIGN_KEY = 'design';
const ASIDE_KEY = 'design-set-aside';

/**
 * Takes over what earlier versions kept: the one design, and what they had set aside because it could not be read.
 * An old entry is deleted only once the new one is stored. Takes nothing when either store says no.
 */
export async function takeOverOld(old: OldKeep, shelf: Shelf, nowMs: number): Promise<void> {
  try {
    const design = await old.get(DESIGN_KEY);
    if (typeof design === 'string') await put(design, nowMs);
    await old.del(DESIGN_KEY);
    const aside = await old.get(ASIDE_KEY);
    for (const text of Array.isArray(aside) ? aside : []) if (typeof text === 'string') await put(text, 0);
    await old.del(ASIDE_KEY);
  } catch {
    // it stays where it is, for the next visit
  }

  async function put(text: string, changedMs: number): Promise<void> {
    for (let n = 1; ; n++) {
      const id = `earlier-${n}`;
      const written = await shelf.write({ id, title: titleIn(text), text, changedMs, after: undefined });
      // taken over before, when only the deletion went wrong
      if (written.kind === 'written' || (await shelf.read(id))?.text === text) return;
    }
  }
}

/** Only for the list, before anything is read properly. */
function titleIn(text: string): string {
  try {
    const { title } = JSON.parse(text) as { title?: unknown };
    return typeof title === 'string' ? beginningOf(title, 120) : '';
  } catch {
    return '';
  }
}
