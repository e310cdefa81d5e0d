import { useRef, useState } from 'react';
import type { Design, DesignElement } from '../../../geometry/design/schema.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { alignElements, type AlignTo } from '../../state/actions/elements/align-elements.ts';
import { copyRound, LEAST_AWAY } from '../../state/actions/elements/copy-round.ts';
import { duplicateElements } from '../../state/actions/elements/duplicate-elements.ts';
import { lockElements } from '../../state/actions/elements/lock-elements.ts';
import { isFree, sizeElement, swingElement, turnElement } from '../../state/actions/elements/move-element.ts';
import { placeElements } from '../../state/actions/elements/place-elements.ts';
import { removeElements } from '../../state/actions/elements/remove-elements.ts';
import { setText } from '../../state/actions/elements/set-text.ts';
import { spreadElements, type SpreadOver } from '../../state/actions/elements/spread-elements.ts';
import type { PlacingCommand } from '../stage/carry/placing-keys.ts';
import type { StagePlacing } from '../stage/stage-placing.ts';
import type { Change } from '../../state/change.ts';
import { t } from '../../words/t.ts';
import { useCurrentPlate, usePage, useUi } from '../../page/page-context.ts';
import { centre, nudge } from './placing-moves.ts';
import { sayPlacing } from './placing-words.ts';
import { useChosen, useChosenNow } from './use-chosen.ts';

/** All that can be done to chosen elements, on the stage and by its tools. */
export interface Placing extends StagePlacing {
  readonly chosen: readonly DesignElement[];
  /** What is chosen and where it stands, in a sentence; empty while nothing was chosen on the stage. */
  readonly said: string;
  readonly setSeveral: (on: boolean) => void;
  readonly setSnapping: (on: boolean) => void;
  readonly align: (to: AlignTo) => void;
  readonly toMiddle: () => void;
  readonly spread: (over: SpreadOver) => void;
  readonly copyRound: (count: number) => void;
  readonly lock: (locked: boolean) => void;
}

/** One press of plus or minus. */
const SIZE_STEP = 1.05;

/** The design's actions do the work; this knows what is chosen, and says what happened. */
export function usePlacing(): Placing {
  const { ui, design: store, plates } = usePage();
  const { spec, plate } = useCurrentPlate();
  const several = useUi((s) => s.several);
  const snapping = useUi((s) => s.snapping);
  const placing = useUi((s) => s.placing);
  const typingId = useUi((s) => s.typingId);
  const unit = useUi((s) => s.unit);
  const [walkedId, setWalkedId] = useState<string>();
  const before = useRef<{ id: string; design: Design; steps: number }>(undefined);

  const { elements, chosenIds, chosen } = useChosen();
  const radiusMm = plate ? plate.diameterMm / 2 : 1;
  const { now, idsNow, chosenNow } = useChosenNow();
  const extentsNow = (): readonly Extent[] => plates.getState().plates[spec.id]?.layout.extents ?? [];
  const apply = (change: Change): void => store.getState().apply(change);
  const notice = (sentence: string): void => ui.getState().set({ notice: sentence });
  const choose = (ids: readonly string[]): void => {
    const [first, ...others] = ids;
    setWalkedId(undefined);
    store.getState().closeMerge();
    ui.getState().set({ selectedId: first, alsoIds: others, placing: first !== undefined, typingId: undefined });
  };
  const focusStage = (): void =>
    document.querySelector<HTMLElement>('[data-plate-stage]')?.focus({ preventScroll: true });

  /** Says once that locked things stay; false when nothing of the chosen can move. */
  function movable(): boolean {
    const all = chosenNow();
    if (all.length === 0) return false;
    if (all.some((e) => e.locked !== true)) return true;
    notice(t('placing.locked'));
    return false;
  }

  function moveEach(by: (e: DesignElement) => DesignElement): void {
    if (movable()) apply(placeElements(now(), chosenNow().map(by)));
  }

  function onCommand(command: PlacingCommand): void {
    switch (command.kind) {
      case 'nudge':
        return moveEach((e) => nudge(e, command.right, command.up, radiusMm));
      case 'turn':
        return moveEach((e) => (isFree(e) ? turnElement(e, command.deg) : swingElement(e, command.deg)));
      case 'size':
        return moveEach((e) => sizeElement(e, SIZE_STEP ** command.steps));
      case 'remove':
        return remove();
      case 'duplicate':
        return taken(duplicateElements(now(), idsNow(), extentsNow(), radiusMm));
      case 'all':
        return choose(elements.filter((e) => e.locked !== true).map((e) => e.id));
      case 'type':
        return type();
      case 'leave':
        ui.getState().set({ several: false });
        return choose([]);
    }
  }

  function remove(): void {
    if (!movable()) return;
    const change = removeElements(now(), idsNow());
    const count = now().elements.length - change.design.elements.length;
    apply(change);
    choose([]);
    notice(t('placing.removed', { count }));
    focusStage();
  }

  /** The copies are what one goes on with. */
  function taken(change: Change & { readonly ids: readonly string[] }): void {
    if (change.ids.length === 0) return notice(t('placing.full'));
    apply(change);
    choose(change.ids);
  }

  function type(): void {
    const [first] = chosenNow();
    if (!first || !('text' in first)) return;
    store.getState().closeMerge();
    before.current = { id: first.id, design: now(), steps: store.getState().history.past.length };
    ui.getState().set({ selectedId: first.id, alsoIds: [], placing: true, typingId: first.id });
  }

  const said = sayPlacing({ elements, chosen, several, placing, walkedId }, radiusMm, unit);

  return {
    elements,
    chosenIds,
    chosen,
    several,
    snapping,
    typingId,
    said,
    onChoose: choose,
    onPlace: (moved) => apply(placeElements(now(), moved)),
    onPlaced: () => store.getState().closeMerge(),
    onLocked: () => notice(t('placing.locked')),
    onCommand,
    onWalk: setWalkedId,
    onText: (id, text) => apply(setText(now(), id, text)),
    onTyped(keep) {
      const was = before.current;
      before.current = undefined;
      ui.getState().set({ typingId: undefined });
      // One step of the history holds all that was typed; taking it back leaves none.
      if (!keep && was && now() !== was.design && store.getState().history.past.length > was.steps)
        store.getState().undo();
      store.getState().closeMerge();
    },
    setSeveral: (on) => ui.getState().set({ several: on }),
    setSnapping: (on) => ui.getState().set({ snapping: on }),
    align: (to) => movable() && apply(alignElements(now(), idsNow(), to, extentsNow(), radiusMm)),
    toMiddle: () => moveEach(centre),
    spread: (over) => movable() && apply(spreadElements(now(), idsNow(), over, extentsNow(), radiusMm)),
    copyRound(count) {
      const [first] = chosenNow();
      if (!first) return;
      const change = copyRound(now(), first.id, count);
      if (change.ids.length > 0) taken(change);
      else if (isFree(first) && Math.hypot(first.x, first.y) < LEAST_AWAY) notice(t('placing.onCentre'));
      else if (count > 1) notice(t('placing.full'));
    },
    lock: (locked) => apply(lockElements(now(), idsNow(), locked)),
  };
}
