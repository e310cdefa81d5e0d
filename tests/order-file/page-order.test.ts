import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { planPlates } from '../../geometry/pipeline/plan-plates.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { LONGEST_TITLE } from '../../web/state/actions/agreed/set-title.ts';
import { onlyToLookAt } from '../../web/handover/order/only-to-look-at.ts';
import { approvalIsStale, sealOrder } from '../../web/worker/make-order.ts';
import { openOrder } from '../../web/worker/open-order.ts';
import type { MadeFile } from '../../web/worker/plate-api.ts';
import { withWords } from '../../web/words/t.ts';
import { resealed } from './damages.ts';
import { approved, madeOrder, smallDesign } from './sound-order.ts';

const store = createStore();

async function make(design: Design, plateId: string, book: StockBook) {
  const { faces } = await loadFaces(design);
  return { plate: makePlate(design, plateId, faces, store, book) };
}

describe('the page', () => {
  it('opens what the command wrote, and makes its cut files again', async () => {
    const order = await madeOrder(smallDesign('OB'));
    const steps: number[] = [];
    const opened = await openOrder(order.bytes, make, BUILT_IN, ({ done }) => steps.push(done));
    expect(opened).toMatchObject({ kind: 'sound' });
    expect(steps).toEqual([0]);
    const forged = resealed(order);
    const told = await openOrder(forged.bytes, make, BUILT_IN, () => undefined);
    if (!('kind' in told) || told.kind !== 'unsound') throw new Error('opened as sound');
    expect(told.faults.map(({ file }) => file)).toEqual([forged.file]);
  });

  it('says so where a plate cannot be made again', async () => {
    const order = await madeOrder(smallDesign('OB'));
    const cannot = () => Promise.resolve({ problem: 'trouble.worker' as const });
    expect(await openOrder(order.bytes, cannot, BUILT_IN, () => undefined)).toEqual({ problem: 'trouble.worker' });
  });

  it('seals an order of its own files that is sound', async () => {
    const design = smallDesign('OB');
    const order = await madeOrder(design);
    const { faces } = await loadFaces(design);
    const planned = planPlates(design, faces, store, BUILT_IN);
    const asMade = ({ name, bytes }: { name: string; bytes: Uint8Array }): MadeFile => ({
      name,
      type: 'application/octet-stream',
      bytes: bytes.slice(),
    });
    const sheet = { role: 'spec-sheet' as const, file: asMade(order.papers[0]!) };
    const sealed = sealOrder(design, planned, order.cut.map(asMade), [sheet], BUILT_IN);
    const read = readOrderFile(sealed.bytes);
    if (read.kind !== 'sound') throw new Error(read.faults.map((f) => f.problem).join(' '));
    // The findings too are the command's.
    expect(read.files).toEqual([...order.cut, order.papers[0], order.papers[1]]);
    expect(approvalIsStale(design, BUILT_IN)).toBe(false);
    expect(approvalIsStale(approved(design, 'f'.repeat(64)), BUILT_IN)).toBe(true);
  });

  it('marks a design that is only to be looked at, and takes its approval away', async () => {
    await withWords(Promise.resolve(), 'work');
    const looked = onlyToLookAt(smallDesign('OB', 'x'.repeat(120)));
    expect(looked.title).toMatch(/^x+ \(not verified\)$/);
    expect(looked.title).toHaveLength(LONGEST_TITLE);
    expect(looked.approval).toBeUndefined();
  });
});
