import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import { amountOf, isTooMuch } from '../../geometry/design/amount.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { ShopBook } from '../../geometry/shop/shop-book.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { DesignStore } from '../state/design-store.ts';
import type { Change } from '../state/change.ts';
import type { PlatesState, PlatesStore } from '../state/plates-store.ts';
import type { CardList } from '../state/own/card-list.ts';
import type { OwnDesigns } from '../state/own/own-designs.ts';
import type { SavingStore, SavingStoreState } from '../state/saving-store.ts';
import type { UiState, UiStore } from '../state/ui-store.ts';
import { sayRefusal } from '../words/say/say-refusal.ts';
import type { NewerVersionStore } from './newer-version.ts';
import type { PlateClient } from '../worker/plate-client.ts';
import type { WholeShop } from './fetch-shop.ts';

/** Everything the page stands on, made once at the start. */
export interface Page {
  readonly design: DesignStore;
  readonly ui: UiStore;
  readonly plates: PlatesStore;
  readonly saving: SavingStore;
  readonly client: PlateClient;
  readonly own: OwnDesigns;
  readonly list: CardList;
  readonly newer: NewerVersionStore;
  /** Works out a design that was stopped, or that the last visit ended over. */
  readonly workAgain: () => void;
  /** The shop has no numbers of its own any more: those that ship are right from now on. */
  readonly forgetStock: () => void;
  /** What the shop can cut: its own stock file, or the one that ships. */
  readonly book: StockBook;
  /** Who the shop is and what it asks; absent where nothing is said of it: then prices are on request. */
  readonly shop?: ShopBook;
  /** Reads all of the shop's own file; the same promise each time. The page Proof has what it gives as `shop`. */
  wholeShop: () => Promise<WholeShop>;
}

export const PageContext = createContext<Page | undefined>(undefined);

export function usePage(): Page {
  const page = useContext(PageContext);
  if (page === undefined) throw new Error('usePage outside of the page');
  return page;
}

export function useDesign(): Design {
  return useStore(usePage().design, (s) => s.history.present);
}

export function useUi<T>(pick: (state: UiState) => T): T {
  return useStore(usePage().ui, pick);
}

export function useSaving<T>(pick: (state: SavingStoreState) => T): T {
  return useStore(usePage().saving, pick);
}

export function usePlates<T>(pick: (state: PlatesState) => T): T {
  return useStore(usePage().plates, pick);
}

/** Does a user action on the design as it is now; one that would make it too much to work out is refused in words. */
export function useAct(): (action: (design: Design) => Change) => void {
  const { design, ui } = usePage();
  return (action) => {
    const state = design.getState();
    const { present } = state.history;
    const change = action(present);
    const { elements } = change.design;
    if (elements !== present.elements && isTooMuch(amountOf(elements))) void sayTooMuch(ui, elements);
    else state.apply(change);
  };
}

async function sayTooMuch(ui: UiStore, elements: Design['elements']): Promise<void> {
  const { amountFault } = await import('../../geometry/design/work-fault.ts');
  const fault = amountFault(elements);
  if (fault) ui.getState().set({ notice: await sayRefusal(fault) });
}

/** Does a user action as an undo step of its own, whatever was edited just before. */
export function useStep(): (action: (design: Design) => Change) => void {
  const { design } = usePage();
  const act = useAct();
  return (action) => {
    design.getState().closeMerge();
    act(action);
    design.getState().closeMerge();
  };
}

/** The design's plate that is looked at, and what was last made of it. */
export function useCurrentPlate(): {
  readonly spec: Design['plates'][number];
  readonly plate: PlateResult | undefined;
} {
  const design = useDesign();
  const plateId = useUi((s) => s.plateId);
  const plates = usePlates((s) => s.plates);
  const spec = design.plates.find((p) => p.id === plateId) ?? design.plates[0];
  if (spec === undefined) throw new Error('a design without plates');
  return { spec, plate: plates[spec.id] };
}
