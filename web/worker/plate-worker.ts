import { isText } from '../../geometry/design/kinds.ts';
import { expose, transfer } from 'comlink';
import { loadFaces } from '../../fonts/browser-faces.ts';
import { withOrderDays } from '../../geometry/checks/order-days.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { beat, beginBeats } from './beat.ts';
import { packPlate } from './pack-plate.ts';
import type { Made, PlateApi } from './plate-api.ts';
import { createRecentPlates } from './recent-plates.ts';
import { watchStore } from './watched-store.ts';
import { withFaceProblems } from './with-face-problems.ts';

/** Glyphs worked out once serve again, keystroke after keystroke, as long as the page is open. */
const store = watchStore(createStore(), beat);

const recent = createRecentPlates(12);

async function make(design: Design, plateId: string, book: StockBook): Promise<Made> {
  const known = recent.get(design, plateId);
  if (known !== undefined) return { plate: known };
  try {
    const { faces, problems } = await loadFaces(design);
    const plate = makePlate(design, plateId, faces, store, book);
    const texts = (face: string): string[] =>
      design.elements.flatMap((e) => (isText(e) && e.face === face ? [e.id] : []));
    // a face that could not be fetched may come at the next try
    if (problems.length === 0) recent.put(design, plateId, plate);
    return { plate: withFaceProblems(plate, texts, problems) };
  } catch {
    return { problem: 'trouble.worker' };
  }
}

/** Plates asked for; what only advises makes way for them. */
let asked = 0;

const api: PlateApi = {
  async make(design, plateId, book, today) {
    asked++;
    const made = await make(design, plateId, book);
    if ('problem' in made) return made;
    // Only for the page: plates kept and files are the same on every day.
    const packed = packPlate(withOrderDays(made.plate, design, today));
    return transfer({ packed }, [packed.xy.buffer]);
  },
  async advise(design, plateId, book) {
    const before = asked;
    const made = await make(design, plateId, book);
    if ('problem' in made) return [];
    const { findWhereItHolds } = await import('../../geometry/pipeline/where-it-holds.ts');
    const { faces } = await loadFaces(design);
    const search = findWhereItHolds(design, made.plate);
    let next = search.next();
    while (next.done !== true) {
      // a message that waits is let in between two plates
      await new Promise((resolve) => setTimeout(resolve));
      if (asked !== before) return [];
      next = search.next(makePlate(next.value, plateId, faces, store, book));
    }
    return next.value;
  },
  async plan(design, plateId, book, today) {
    const made = await make(design, plateId, book);
    if ('problem' in made) return made;
    try {
      const { planMade } = await import('./plan-made.ts');
      const { plate, ...rest } = planMade(design, made.plate);
      const packed = packPlate(withOrderDays(plate, design, today));
      return transfer({ packed, ...rest }, [packed.xy.buffer]);
    } catch {
      return { problem: 'trouble.worker' };
    }
  },
  async differ(before, after, plateId, book) {
    const was = await make(before, plateId, book);
    const is = await make(after, plateId, book);
    if ('problem' in was) return was;
    if ('problem' in is) return is;
    try {
      const { differ } = await import('./differ.ts');
      return differ(was.plate, is.plate);
    } catch {
      return { problem: 'trouble.worker' };
    }
  },
  async files(design, wanted, book, told = () => undefined) {
    try {
      const { makeFiles } = await import('./make-files.ts');
      return await makeFiles(design, wanted, make, book, told);
    } catch {
      return { problem: 'trouble.files' };
    }
  },
  async openOrder(bytes, book, told) {
    try {
      const { openOrder } = await import('./open-order.ts');
      return await openOrder(bytes, make, book, told);
    } catch {
      return { problem: 'handOver.trouble' };
    }
  },
};

expose(api);
beginBeats();
