import type { Wording } from '../../geometry/sentences/wording.ts';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Point } from '../../geometry/shapes.ts';
import type { Language } from '../words/languages.ts';
import { readPreferences, writePreferences, type ThemeChoice, type Unit } from '../words/preferences.ts';

/** design: what it says and how it looks. proof: choosing, price and approval. cut: sheets and files for production. */
export const PAGES = ['design', 'proof', 'cut'] as const;
export type PageName = (typeof PAGES)[number];
export type Step = 'say' | 'look' | 'size' | 'take';
export const STEPS: readonly Step[] = ['say', 'look', 'size', 'take'];
export type View = 'plate' | 'barrel';
export type BarrelState = 'plate' | 'paint' | 'char';

/** An approval came by a link, for a design that is kept here: the person says whether it is taken. */
export interface ApprovalAsked {
  /** Who approved, and when (ISO 8601), by what the link says. */
  readonly name: string;
  readonly at: string;
  readonly title: string;
  readonly changedSince: boolean;
  /** Name of the option that was approved in place of the design. */
  readonly option: string | undefined;
  /** In what the own order differs from what was approved. */
  readonly orderBy: readonly Wording[];
  readonly take: (withOrder: boolean) => Promise<void>;
  /** Opens what the link carries as a design of its own. */
  readonly look: () => Promise<void>;
}

/** What the person looks at; nothing of it is part of the design, so undo leaves it alone. */
export interface UiState {
  readonly page: PageName;
  /** Those that the shop offers, in their order; never empty. */
  readonly pages: readonly PageName[];
  /** The design came by a link just now: somebody is to look at it and say yes. */
  readonly byLink: boolean;
  /** Why the link in the address cannot be opened; nothing else is shown then. */
  readonly linkRefused: string | undefined;
  readonly step: Step;
  /**
   * What stands in place of the first question. choose: the beginnings are laid out; all: nothing, every element is listed;
   * else the questions of the design's own beginning, where it has one.
   */
  readonly begin: 'choose' | 'all' | undefined;
  /** The plate looked at; the first when it is no longer in the design. */
  readonly plateId: string | undefined;
  readonly view: View;
  readonly barrelState: BarrelState;
  readonly language: Language;
  readonly unit: Unit;
  readonly theme: ThemeChoice;
  /** The element worked on; whoever sets it alone lets go of all others. */
  readonly selectedId: string | undefined;
  /** What is chosen along with it on the stage. */
  readonly alsoIds: readonly string[];
  /** It was chosen on the stage, to be placed by hand: its tools are shown. */
  readonly placing: boolean;
  /** A tap on the stage adds to what is chosen. */
  readonly several: boolean;
  /** What is dragged rests on guides. */
  readonly snapping: boolean;
  /** The text being typed on the stage. */
  readonly typingId: string | undefined;
  /** Place in the list of findings, from 0. */
  readonly litFinding: number | undefined;
  readonly findingsOpen: boolean;
  /** The list of own designs lies over the page. */
  readonly designsOpen: boolean;
  /** Bridges are shown on the plate and can be worked on by hand. */
  readonly bridging: boolean;
  /** The gap between plate and wood is shown. */
  readonly gaps: boolean;
  /** Bridge chosen there: the id of its edit, or its own when it is the tool's. */
  readonly bridgeKey: string | undefined;
  /** The next place pointed at gets a bridge. */
  readonly addingBridge: boolean;
  /** Where the stage was last asked to look closely, mm in the plate's frame. */
  readonly closeUp: Point | undefined;
  readonly approvalAsked: ApprovalAsked | undefined;
  /** What was asked for needs a part of the page that could not be loaded. */
  readonly partMissing: boolean;
  /** The shop's own numbers are missing: why, and what is wrong with them. */
  readonly numbers: { readonly why: 'gone' | 'late' | 'unreadable'; readonly problem?: string } | undefined;
  /** Files are given all the same, by the numbers that ship: a person said so. */
  readonly foreignFiles: boolean;
  /** One calm sentence about what just happened, or went wrong. */
  readonly notice: string | undefined;
  set(part: Partial<Omit<UiState, 'set'>>): void;
}

export type UiStore = StoreApi<UiState>;

export function createUiStore(): UiStore {
  const preferences = readPreferences();
  const store = createStore<UiState>()((set) => ({
    page: 'design',
    pages: PAGES,
    byLink: false,
    linkRefused: undefined,
    step: 'say',
    begin: undefined,
    plateId: undefined,
    view: 'plate',
    barrelState: 'plate',
    language: preferences.language,
    unit: preferences.unit,
    theme: preferences.theme,
    selectedId: undefined,
    alsoIds: [],
    placing: false,
    several: false,
    snapping: true,
    typingId: undefined,
    litFinding: undefined,
    findingsOpen: false,
    designsOpen: false,
    bridging: false,
    gaps: false,
    bridgeKey: undefined,
    addingBridge: false,
    closeUp: undefined,
    approvalAsked: undefined,
    partMissing: false,
    numbers: undefined,
    foreignFiles: false,
    notice: undefined,
    set: (part) =>
      set(
        'selectedId' in part && !('alsoIds' in part)
          ? { alsoIds: [], placing: false, typingId: undefined, ...part }
          : part,
      ),
  }));
  store.subscribe((now, before) => {
    const { language, unit, theme } = now;
    if (language !== before.language || unit !== before.unit || theme !== before.theme) {
      writePreferences({ language, unit, theme });
    }
  });
  return store;
}

/** What goes along to the next question: only what was chosen on the plate; a field typed into is let go. */
export function lettingGo({ placing, step }: UiState): Partial<Pick<UiState, 'selectedId'>> {
  return step === 'say' && !placing ? { selectedId: undefined } : {};
}
