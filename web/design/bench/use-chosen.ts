import { useMemo } from 'react';
import type { Design, DesignElement } from '../../../geometry/design/schema.ts';
import { useDesign, usePage, useUi } from '../../page/page-context.ts';
import { fromRim } from '../../state/from-rim.ts';

/** The elements from rim to centre, and which of them are chosen, as the page shows them. */
export function useChosen() {
  const design = useDesign();
  const selectedId = useUi((s) => s.selectedId);
  const alsoIds = useUi((s) => s.alsoIds);
  const elements = useMemo(() => fromRim(design), [design]);
  const chosen = useMemo(() => pick(elements, [selectedId, ...alsoIds]), [elements, selectedId, alsoIds]);
  const chosenIds = useMemo(() => chosen.map((e) => e.id), [chosen]);
  return { elements, chosen, chosenIds };
}

/** The same as things stand now: keys come faster than the page is painted. */
export function useChosenNow() {
  const { ui, design: store } = usePage();
  const now = (): Design => store.getState().history.present;
  const chosenNow = (): DesignElement[] => {
    const { selectedId, alsoIds } = ui.getState();
    return pick(now().elements, [selectedId, ...alsoIds]);
  };
  return { now, chosenNow, idsNow: (): string[] => chosenNow().map((e) => e.id) };
}

function pick(elements: readonly DesignElement[], ids: readonly (string | undefined)[]): DesignElement[] {
  return ids.flatMap((id) => elements.filter((e) => e.id === id));
}
