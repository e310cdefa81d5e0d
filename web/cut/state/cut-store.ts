import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design } from '../../../geometry/design/schema.ts';
import type { NestFault } from '../../../geometry/sheet/check-nest.ts';
import type { MissingPlates, NestedSheet, SheetKind, SheetRest } from '../../../geometry/sheet/sheets.ts';
import type { Refused } from '../../../geometry/sentences/wording.ts';
import type { Key } from '../../words/keys.ts';
import { startHistory, type History } from '../../state/history.ts';
import type { CutPlate, PlanJob, PlannedSheet, PlanWishes } from '../../worker/cut-api.ts';

/** Where a design of the order comes from, and can be read again. */
export type Origin =
  | { readonly kind: 'open' }
  | { readonly kind: 'own'; readonly id: string }
  | { readonly kind: 'file'; readonly name: string };

export interface OrderItem {
  /** `A` for the open design, then `B`, `C`. */
  readonly key: string;
  readonly origin: Origin;
  readonly design: Design;
  /** How many of each plate, by its id; absent: as many as the design says. */
  readonly counts: Readonly<Record<string, number>>;
}

/** What is drawn over the sheet. */
export interface Shown {
  readonly numbers: boolean;
  readonly rapids: boolean;
  readonly leads: boolean;
  readonly heat: boolean;
}

export interface Planned {
  readonly job: PlanJob;
  /** By number of the sheet, as they were asked for. */
  readonly sheets: Readonly<Record<number, PlannedSheet>>;
}

export interface CutState {
  readonly items: readonly OrderItem[];
  /** The plates of the items as they were when they were last taken. */
  readonly plates: readonly CutPlate[];
  readonly busy: 'taking' | 'placing' | 'planning' | undefined;
  readonly trouble: Key | undefined;
  /** Why the order cannot be planned. */
  readonly refused: Refused | undefined;
  /** Kinds of sheet to take; undefined: the first that suits the material. */
  readonly kindIds: readonly string[] | undefined;
  readonly remnants: readonly SheetKind[];
  /** Typed by the person; absent: as the process asks. */
  readonly ownGaps: { readonly betweenMm?: number; readonly edgeMm?: number };
  /** Sheets with their plates; undo takes back what was moved by hand. */
  readonly history: History<readonly NestedSheet[]>;
  readonly missing: readonly MissingPlates[];
  readonly rest: SheetRest | undefined;
  readonly faults: readonly NestFault[];
  readonly sheetAt: number;
  readonly selected: string | undefined;
  readonly wishes: PlanWishes;
  readonly planned: Planned | undefined;
  /** What the plan no longer fits; empty while it does. */
  readonly changed: readonly Refused[];
  readonly shown: Shown;
  /** The pass that is pointed out. */
  readonly lit: string | undefined;
  set(part: Partial<Omit<CutState, 'set'>>): void;
}

export type CutStore = StoreApi<CutState>;

/** The order that is cut: apart from the design, so that undo of the one leaves the other alone. */
export function createCutStore(): CutStore {
  return createStore<CutState>()((set) => ({
    items: [],
    plates: [],
    busy: undefined,
    trouble: undefined,
    refused: undefined,
    kindIds: undefined,
    remnants: [],
    ownGaps: {},
    history: startHistory([]),
    missing: [],
    rest: undefined,
    faults: [],
    sheetAt: 0,
    selected: undefined,
    wishes: { tabs: false, held: [], last: [], witness: false, stages: 1 },
    planned: undefined,
    changed: [],
    shown: { numbers: false, rapids: true, leads: true, heat: false },
    lit: undefined,
    set: (part) => set(part),
  }));
}
