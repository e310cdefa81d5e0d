/**
 * Stands in the browser's storage while a design is worked out. Where it is still there when the design is opened, the
 * page, or all of the browser, ended over that work: then it is not begun again by itself.
 */
export interface WorkMark {
  begin(): void;
  end(): void;
  /** Left by an earlier visit for the design that is open. */
  found(): boolean;
  /** A person wants the design worked out all the same. */
  forget(): void;
  /** The page is closed as pages are: work that was going well is no reason to be careful. silentS: without a sign of it. */
  leave(silentS: number): void;
}

const FAMILY = 'bridgehead-at-work ';
/** What was made is still to be painted, which may hang as well. */
const PAINTED_MS = 1000;
/** Work that gave a sign of life so lately goes well. */
const WELL_S = 3;

/** storage: where localStorage is shut, undefined or throwing. openId: the entry of the design that is open. */
export function createWorkMark(storage: () => Storage | undefined, openId: () => string): WorkMark {
  let mine: { readonly key: string } | undefined;
  let ending: ReturnType<typeof setTimeout> | undefined;
  const key = (): string => FAMILY + openId();

  function tried<T>(work: (there: Storage) => T): T | undefined {
    try {
      const there = storage();
      return there && work(there);
    } catch {
      return undefined;
    }
  }

  function remove(): void {
    clearTimeout(ending);
    const { key: set } = mine ?? {};
    mine = undefined;
    if (set !== undefined) tried((there) => there.removeItem(set));
  }

  return {
    begin() {
      clearTimeout(ending);
      if (mine?.key !== key()) remove();
      mine = { key: key() };
      const set = mine.key;
      tried((there) => there.setItem(set, '1'));
    },
    end() {
      clearTimeout(ending);
      ending = setTimeout(remove, PAINTED_MS);
    },
    found: () => mine?.key !== key() && tried((there) => there.getItem(key()) !== null) === true,
    forget: () => void tried((there) => there.removeItem(key())),
    leave(silentS) {
      if (silentS < WELL_S) remove();
    },
  };
}
