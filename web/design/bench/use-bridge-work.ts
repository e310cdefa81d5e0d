import { useMemo } from 'react';
import { onPlate, WIDEST_SHARE, type HandBridge } from '../../../geometry/bridges/edit-terms.ts';
import type { Bridge } from '../../../geometry/bridges/types.ts';
import type { BridgeEdit, Design } from '../../../geometry/design/schema.ts';
import { unplacePoint } from '../../../geometry/measure/clock.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { addBridge } from '../../state/actions/bridges/add-bridge.ts';
import { dropBridge } from '../../state/actions/bridges/drop-bridge.ts';
import { forgetEditsOn } from '../../state/actions/bridges/forget-edits-on.ts';
import { keepBridge, type WorkedBridge } from '../../state/actions/bridges/keep-bridge.ts';
import type { BridgeCommand } from '../stage/bridge-keys.ts';
import { bridgeKey, middleOf, shifted, turned } from '../stage/bridge-line.ts';
import { t } from '../../words/t.ts';
import { useAct, useCurrentPlate, useDesign, usePage, usePlates, useUi } from '../../page/page-context.ts';

export interface ChosenBridge extends WorkedBridge {
  readonly key: string;
  /** Place among the plate's bridges, from 0; -1 while it is not on the plate. */
  readonly index: number;
  /** What it stands on, such as `letter O`. */
  readonly label: string;
}

export interface BridgeWork {
  readonly bridges: readonly Bridge[];
  readonly chosen: ChosenBridge | undefined;
  /** The chosen one's shape carries changes by hand. */
  readonly shapeEdited: boolean;
  readonly adding: boolean;
  readonly choose: (key: string | undefined) => void;
  /** The next bridge (1) or the one before (-1), around. */
  readonly step: (by: 1 | -1) => void;
  readonly move: (key: string, line: Pick<HandBridge, 'from' | 'to'>) => void;
  readonly nudge: (rightMm: number, upMm: number) => void;
  readonly turn: (deg: number) => void;
  /** By so many quarters of the least width. */
  readonly widen: (quarters: number) => void;
  readonly remove: () => void;
  readonly giveBack: () => void;
  readonly setAdding: (adding: boolean) => void;
  readonly addAt: (at: Point) => void;
  /** A key, on the stage or among the tools. */
  readonly obey: (command: BridgeCommand) => void;
}

/** All that can be done to bridges by hand on the plate looked at; the design's actions do the work. */
export function useBridgeWork(): BridgeWork {
  const { ui, design: designs, plates } = usePage();
  const design = useDesign();
  const act = useAct();
  const { plate, spec } = useCurrentPlate();
  const busy = usePlates((s) => s.busy);
  const key = useUi((s) => s.bridgeKey);
  const adding = useUi((s) => s.addingBridge);
  const bridges = useMemo(() => (plate ? inReadingOrder(plate) : NONE), [plate]);
  const chosen = plate && key !== undefined ? chosenOf(plate, design, key, busy) : undefined;

  /** As things stand now: keys and drags can come faster than the page is drawn. */
  function bridgeNow(of: string) {
    const now = plates.getState();
    const known = now.plates[spec.id];
    const bridge = known && chosenOf(known, designs.getState().history.present, of, now.busy);
    return bridge && { plate: known, bridge };
  }

  function keep(of: string, moved: (bridge: ChosenBridge) => Partial<HandBridge>, undo: 'step' | 'merge'): void {
    const now = bridgeNow(of);
    if (!now) return;
    act((before) => {
      const change = keepBridge(before, now.plate, now.bridge, moved(now.bridge), undo);
      if (change.editId === undefined) ui.getState().set({ notice: t('bridges.full') });
      else ui.getState().set({ bridgeKey: change.editId });
      return change;
    });
  }

  function keepChosen(moved: (bridge: ChosenBridge) => Partial<HandBridge>): void {
    const now = ui.getState().bridgeKey;
    if (now !== undefined) keep(now, moved, 'merge');
  }

  const work: Omit<BridgeWork, 'obey'> = {
    bridges,
    chosen,
    shapeEdited: chosen !== undefined && design.bridges.edits.some((e) => shapeOf(e) === chosen.shapeId),
    adding,
    choose: (to) => ui.getState().set({ bridgeKey: to, ...(to !== undefined && { addingBridge: false }) }),
    step(by) {
      if (bridges.length === 0) return;
      const from = chosen && chosen.index >= 0 ? chosen.index : by === 1 ? -1 : 0;
      const next = bridges[(from + by + bridges.length) % bridges.length];
      if (next) ui.getState().set({ bridgeKey: bridgeKey(next), addingBridge: false, closeUp: middleOf(next) });
    },
    move: (of, line) => keep(of, () => line, 'step'),
    nudge: (rightMm, upMm) => keepChosen((b) => shifted(b, rightMm, upMm)),
    turn: (deg) => keepChosen((b) => turned(b, deg)),
    widen(quarters) {
      const least = plate?.rules.leastBridgeMm ?? 1;
      keepChosen(({ widthMm }) => {
        const share = Math.round((widthMm / least) * 4 + quarters) / 4;
        return { widthMm: Math.min(WIDEST_SHARE, Math.max(1, share)) * least };
      });
    },
    remove() {
      if (!plate || !chosen) return;
      act((before) => dropBridge(before, plate, chosen));
      ui.getState().set({ bridgeKey: undefined });
    },
    giveBack() {
      if (!chosen) return;
      act((before) => forgetEditsOn(before, chosen.shapeId));
      ui.getState().set({ bridgeKey: undefined });
    },
    setAdding: (on) => ui.getState().set({ addingBridge: on, ...(on && { bridgeKey: undefined }) }),
    addAt(at) {
      if (!plate) return;
      act((before) => {
        const change = addBridge(before, plate, at);
        const { editId } = change;
        ui.getState().set(
          editId === undefined
            ? { notice: t('bridges.noOpening') }
            : { bridgeKey: editId, addingBridge: false, notice: undefined },
        );
        return change;
      });
    },
  };
  return { ...work, obey: (command) => obey(work, command) };

  function obey(to: Omit<BridgeWork, 'obey'>, command: BridgeCommand): void {
    if (command.kind === 'nudge') to.nudge(command.right, command.up);
    else if (command.kind === 'turn') to.turn(command.deg);
    else if (command.kind === 'widen') to.widen(command.quarters);
    else if (command.kind === 'remove') to.remove();
    else if (adding) to.setAdding(false);
    else if (chosen) to.choose(undefined);
    else ui.getState().set({ bridging: false });
  }
}

/**
 * The bridge of a key. One by hand whose plate is still being worked out is where its edit says, so that one press of
 * a key follows on the other without waiting.
 */
function chosenOf(plate: PlateResult, design: Design, key: string, busy: boolean): ChosenBridge | undefined {
  const bridges = inReadingOrder(plate);
  const index = bridges.findIndex((b) => bridgeKey(b) === key);
  const bridge = bridges[index];
  const edit = design.bridges.edits.find((e) => e.id === key);
  const labelOf = (shapeId: string) => plate.layout.shapes.find((s) => s.id === shapeId)?.label ?? '';
  if (edit?.kind === 'keep' && (busy || !bridge)) {
    const shape = plate.layout.shapes.find((s) => s.id === shapeOf(edit));
    if (!shape || shape.label !== edit.label) return undefined;
    return {
      key,
      index,
      label: shape.label,
      shapeId: shape.id,
      editId: edit.id,
      from: onPlate(edit.from, shape),
      to: onPlate(edit.to, shape),
      widthMm: edit.widthShare * plate.rules.leastBridgeMm,
      widens: false,
    };
  }
  // A bridge whose edit was just taken back or undone is the tool's own again as soon as the plate says so.
  if (!bridge || (bridge.editId !== undefined && !edit)) return undefined;
  return { ...bridge, key, index, label: labelOf(bridge.shapeId) };
}

/** Letter by letter, in each from its head to its foot: a bridge that is worked on keeps its place in the row. */
function inReadingOrder(plate: PlateResult): readonly Bridge[] {
  const shapes = new Map(plate.layout.shapes.map((s, i) => [s.id, { at: i, placement: s.placement }]));
  const placed = plate.bridges.map((bridge) => {
    const shape = shapes.get(bridge.shapeId);
    const own = shape ? unplacePoint(middleOf(bridge), shape.placement) : { x: 0, y: 0 };
    return { bridge, at: shape?.at ?? 0, own };
  });
  placed.sort((p, q) => p.at - q.at || q.own.y - p.own.y || p.own.x - q.own.x);
  return placed.map((p) => p.bridge);
}

function shapeOf(edit: BridgeEdit): string {
  return `${edit.element}/${edit.shape}`;
}

const NONE: readonly never[] = [];
