import { createStore, type StoreApi } from 'zustand/vanilla';

/** Where the plan is played: apart from all else, since it changes with every frame. */
export interface PlayState {
  /** The sheet is shown as it is cut, not as it comes out. */
  readonly on: boolean;
  readonly playing: boolean;
  /** Since the first movement, s. */
  readonly atS: number;
  /** So many times as fast as the machine. */
  readonly speed: number;
  readonly set: (part: Partial<Omit<PlayState, 'set'>>) => void;
}

export type PlayStore = StoreApi<PlayState>;

export function createPlayStore(): PlayStore {
  return createStore<PlayState>()((set) => ({
    on: false,
    playing: false,
    atS: 0,
    speed: 10,
    set: (part) => set(part),
  }));
}
