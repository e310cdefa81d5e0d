import type { BridgeEdit } from '../../../../geometry/design/schema.ts';

/** As many edits as a design may carry. */
export const MOST_EDITS = 500;

const FORMER = ':former';

/** Id of the edit that bars the place a bridge by hand was moved away from. */
export function formerPlaceId(editId: string): string {
  return `${editId}${FORMER}`;
}

/** What a person would count as one change: not the former place of a bridge that was moved. */
export function countedEdits(edits: readonly BridgeEdit[]): BridgeEdit[] {
  const ids = new Set(edits.map((e) => e.id));
  return edits.filter((e) => !e.id.endsWith(FORMER) || !ids.has(e.id.slice(0, -FORMER.length)));
}
