import type { Design } from '../../../geometry/design/schema.ts';
import type { Key } from '../../words/keys.ts';
import type { Planned, PlannedPlate } from '../../worker/plate-api.ts';
import { plateKeys } from '../../handover/price/plate-key.ts';

export type PlannedDesign =
  | { readonly state: 'working' }
  | { readonly state: 'failed'; readonly problem: Key }
  | { readonly state: 'ready'; readonly plates: readonly PlannedPlate[] };

/** A design's plates among all that were planned, called and counted as the design says. */
export function plannedOf(design: Design, planned: ReadonlyMap<string, Planned>): PlannedDesign {
  const plates: PlannedPlate[] = [];
  for (const { spec, key } of plateKeys(design)) {
    const made = planned.get(key);
    if (made === undefined) return { state: 'working' };
    if ('problem' in made) return { state: 'failed', problem: made.problem };
    const { name, quantity } = spec;
    plates.push({ ...made, plate: { ...made.plate, name, quantity } });
  }
  return { state: 'ready', plates };
}
