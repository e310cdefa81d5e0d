import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { findOutdated } from '../../../geometry/files/job/job.ts';
import type { Refused } from '../../../geometry/sentences/wording.ts';
import { ownRules } from '../../../geometry/stock/own-rules.ts';
import type { CutDesk } from './cut-desk.ts';

/** What the plates taken no longer fit, by the designs as they are now; told to the page. */
export function lookForChanges(desk: CutDesk, now: ReadonlyMap<string, Design>): readonly Refused[] {
  const { get, set } = desk;
  const { plates, changed: before } = get();
  const prints = new Map(
    plates.flatMap(({ wish, key, plateId }) => {
      const design = now.get(key);
      const there = design?.plates.some((p) => p.id === plateId);
      return design && there ? [[wish, fingerprintOf(design, ownRules(design, desk.page.book))] as const] : [];
    }),
  );
  const changed = findOutdated(
    plates.map(({ job }) => job),
    prints,
  );
  const isNews = changed.map(({ problem }) => problem).join() !== before.map(({ problem }) => problem).join();
  if (isNews && get().planned) set({ changed });
  return changed;
}
