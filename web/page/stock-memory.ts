/** Why a shop's own numbers are not what plates are worked out by. */
export type NumbersMissing =
  { readonly why: 'gone' | 'late' } | { readonly why: 'unreadable'; readonly problem: () => Promise<string> | string };

/** What became of looking for the shop's own numbers: their mark, nothing that says there are any, or why they failed. */
export type NumbersFound = { readonly own: string } | 'none' | NumbersMissing;

/** Remembers, in this browser and for this address, that the shop had numbers of its own. */
export interface StockMemory {
  /** Takes down what was found now. Gives what is missing: also numbers that were there on an earlier visit. */
  compare(found: NumbersFound): NumbersMissing | undefined;
  /** The shop has no numbers of its own any more, and a person said so. */
  forget(): void;
}

const FAMILY = 'bridgehead-own-stock ';

/** storage: where localStorage is shut, undefined or throwing. folder: the path that the page lies under. */
export function createStockMemory(storage: () => Storage | undefined, folder: string): StockMemory {
  const key = FAMILY + folder;
  const quietly = <T>(act: (kept: Storage | undefined) => T): T | undefined => {
    try {
      return act(storage());
    } catch {
      return undefined;
    }
  };
  return {
    compare(found) {
      if (found === 'none') return quietly((kept) => kept?.getItem(key)) ? { why: 'gone' } : undefined;
      if ('why' in found) return found;
      quietly((kept) => kept?.setItem(key, found.own));
      return undefined;
    },
    forget: () => void quietly((kept) => kept?.removeItem(key)),
  };
}
