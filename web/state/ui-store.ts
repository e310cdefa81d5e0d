import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Point } from '../../geometry/shapes.ts';
import { readTastes, writeTastes, type ThemeChoice, type Unit } from './tastes.ts';

export type Step = 'say' | 'look' | 'size' | 'take';
export const STEPS: readonly Step[] = ['say', 'look', 'size', 'take'];
export type View = 'plate' | 'barrel';
export type BarrelState = 'plate' | 'paint' | 'char';

/** What the person looks at; nothing of it is part of the design, so undo leaves it alone. */
export interface UiState {
  readonly step: Step;
  /** The plate looked at; the first when it is no longer in the design. */
  readonly plateId: string | undefined;
  readonly view: View;
  readonly barrelState: BarrelState;
  readonly unit: Unit;
  readonly theme: ThemeChoice;
  readonly selectedId: string | undefined;
  /** Place in the list of findings, from 0. */
  readonly litFinding: number | undefined;
  readonly findingsOpen: boolean;
  /** Bridges are shown on the plate and can be worked on by hand. */
  readonly bridging: boolean;
  /** Bridge chosen there: the id of its edit, or its own when it is the tool's. */
  readonly bridgeKey: string | undefined;
  /** The next place pointed at gets a bridge. */
  readonly addingBridge: boolean;
  /** Where the stage was last asked to look closely, mm in the plate's frame. */
  readonly closeUp: Point | undefined;
  /** One calm sentence about what just happened, or went wrong. */
  readonly notice: string | undefined;
  set(part: Partial<Omit<UiState, 'set'>>): void;
}

export type UiStore = StoreApi<UiState>;

export function createUiStore(): UiStore {
  const tastes = readTastes();
  const store = createStore<UiState>()((set) => ({
    step: 'say',
    plateId: undefined,
    view: 'plate',
    barrelState: 'plate',
    unit: tastes.unit,
    theme: tastes.theme,
    selectedId: undefined,
    litFinding: undefined,
    findingsOpen: false,
    bridging: false,
    bridgeKey: undefined,
    addingBridge: false,
    closeUp: undefined,
    notice: undefined,
    set: (part) => set(part),
  }));
  store.subscribe((now, before) => {
    if (now.unit !== before.unit || now.theme !== before.theme) writeTastes({ unit: now.unit, theme: now.theme });
  });
  return store;
}
