import { createBrowserShelf } from '../state/own/browser-shelf.ts';
import { createCardList, type CardList } from '../state/own/card-list.ts';
import { createJournal, takeUpJournal } from '../state/own/journal.ts';
import { remindsNow } from '../state/own/keep-safe.ts';
import { OLD_KEEP } from '../state/own/old-keep.ts';
import { createOwnDesigns, type OwnDesigns } from '../state/own/own-designs.ts';
import { takeOverOld } from '../state/own/take-over-old.ts';
import type { DesignStore } from '../state/design-store.ts';
import type { PlatesStore } from '../state/plates-store.ts';
import type { SavingStore } from '../state/saving-store.ts';
import type { UiStore } from '../state/ui-store.ts';
import { t } from '../words/t.ts';
import { firstDesign } from '../design/beginnings/first-design.ts';

interface Kept {
  readonly own: OwnDesigns;
  readonly list: CardList;
  /** Once there is something to see: reminds of designs that are in this browser only. */
  remind(): Promise<void>;
  /** Takes up where the last visit ended, then saves each change. Resolves when the design to begin with is there. */
  start(): Promise<void>;
}

const OPEN_KEY = 'bridgehead-open';
/** A picture is made once the hand has rested for so long. */
const PICTURE_DELAY_MS = 1200;

/** The store of own designs in this browser, tied to the page. */
export function keepDesignSaved(stores: {
  readonly design: DesignStore;
  readonly ui: UiStore;
  readonly plates: PlatesStore;
  readonly saving: SavingStore;
}): Kept {
  const { design, ui, plates, saving } = stores;
  const shelf = createBrowserShelf(undefined, () => own.saveAgain());
  const nowMs = () => Date.now();
  const journal = createJournal(() => localStorage);
  // missing where the page comes without encryption, whatever the types say
  const { locks } = navigator as Partial<Navigator>;
  const own: OwnDesigns = createOwnDesigns({
    shelf,
    design,
    saving,
    nowMs,
    first: firstDesign,
    hold: {
      locks,
      channel: typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('bridgehead-tabs'),
    },
    remembered,
    remember,
    journal,
    say: (notice) => ui.getState().set({ notice }),
    partMissing: () => ui.getState().set({ partMissing: true }),
  });

  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') leave();
  });
  window.addEventListener('pagehide', leave);

  function leave(): void {
    own.note();
    void own.flush();
  }

  let timer: ReturnType<typeof setTimeout> | undefined;
  plates.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const { busy, plates: made } = plates.getState();
      const plate = made[design.getState().history.present.plates[0]?.id ?? ''];
      if (!busy && plate) own.picture(plate);
    }, PICTURE_DELAY_MS);
  });

  // a browser short of room empties what it was not asked to keep; worth a question once there is something to lose
  let asked = false;
  saving.subscribe(({ state, openId }) => {
    if (asked || state !== 'saved' || openId === undefined) return;
    asked = true;
    void askToKeep().then((done) => {
      asked = done;
    });
  });

  async function askToKeep(): Promise<boolean> {
    try {
      const many = (await shelf.cards()).length > 1;
      if (!many && !matchMedia('(display-mode: standalone)').matches) return false;
      // missing where the page comes without encryption, whatever the types say
      await (navigator as Partial<Navigator>).storage?.persist();
    } catch {
      // a browser that will not be asked keeps as it always did
    }
    return true;
  }

  return {
    own,
    async remind() {
      try {
        const cards = (await shelf.cards()).filter(({ binnedMs }) => binnedMs === undefined);
        if (!remindsNow(localStorage, cards, nowMs()) || ui.getState().notice !== undefined) return;
        ui.getState().set({ notice: t('keep.remind', { count: cards.length }) });
      } catch {
        // nothing to remind of where nothing is kept
      }
    },
    list: createCardList({ shelf, own, design, saving, nowMs }),
    async start() {
      await takeOverOld(OLD_KEEP, shelf, nowMs());
      await takeUpJournal(journal, shelf, locks);
      await own.start();
    },
  };
}

/** A tab that is loaded anew shows what it showed; a new tab takes the newest. */
function remembered(): string | undefined {
  try {
    return sessionStorage.getItem(OPEN_KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

function remember(id: string): void {
  try {
    sessionStorage.setItem(OPEN_KEY, id);
  } catch {
    // then the newest is opened
  }
}
