import { createStore, type StoreApi } from 'zustand/vanilla';
import type { DesignElement } from '../../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../../geometry/plate/plate.ts';
import type { Point } from '../../../../geometry/shapes.ts';
import type { Carried } from './carry.ts';

/** What is being dragged; apart from React's state, so that a moving hand redraws one layer and nothing else. */
export interface Drag {
  /** The plate as it was when the hand took hold: shown, without what moves, until the true one is there. */
  readonly plate: PlateResult;
  readonly ids: ReadonlySet<string>;
  readonly before: readonly DesignElement[];
  readonly now: Carried;
  readonly pointer: Point | undefined;
  /** The newest plate at the time of letting go: a newer one ends the picture. */
  readonly droppedOn: PlateResult | undefined;
}

export interface DragState {
  readonly drag: Drag | undefined;
  /** Where a mouse points at, mm, for the readout. */
  readonly pointer: Point | undefined;
}

export type DragStore = StoreApi<DragState>;

export function createDragStore(): DragStore {
  return createStore<DragState>()(() => ({ drag: undefined, pointer: undefined }));
}
