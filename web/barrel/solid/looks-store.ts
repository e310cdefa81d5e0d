import { createStore } from 'zustand/vanilla';

/** Marking paints of a cooperage: near black, limewash, oxide red, a blue, a green. */
export const PAINTS = ['#1f2326', '#efe9db', '#8c2a1c', '#1f4470', '#2f5a3a'] as const;

/** How the barrel is looked at; no part of the design, and forgotten with the page. */
export interface Looks {
  readonly paint: string;
  /** All plates, each on a barrel that fits it. */
  readonly together: boolean;
}

export const looks = createStore<Looks>()(() => ({ paint: PAINTS[0], together: false }));
