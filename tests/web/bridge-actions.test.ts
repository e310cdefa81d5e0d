import { beforeAll, describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { FaceSource } from '../../geometry/adapters/face.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { designSchema, type Design } from '../../geometry/design/schema.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { addBridge } from '../../web/state/actions/bridges/add-bridge.ts';
import { applyMend } from '../../web/state/actions/apply-mend.ts';
import { dropBridge } from '../../web/state/actions/bridges/drop-bridge.ts';
import { forgetEdits } from '../../web/state/actions/bridges/forget-edits.ts';
import { forgetEditsOn } from '../../web/state/actions/bridges/forget-edits-on.ts';
import { countedEdits, MOST_EDITS } from '../../web/state/actions/elements/former-place.ts';
import { keepBridge } from '../../web/state/actions/bridges/keep-bridge.ts';
import { removeElement } from '../../web/state/actions/elements/remove-element.ts';
import { setManner } from '../../web/state/actions/bridges/set-manner.ts';
import { createDesignStore } from '../../web/state/design-store.ts';

const START: Design = {
  ...emptyDesign(),
  plates: [{ id: 'p', name: 'Plate', diameter: { mm: 400 }, quantity: 1 }],
  elements: [
    {
      kind: 'lineText',
      id: 'name',
      text: 'OB',
      face: 'bebas-neue-400',
      x: 0,
      y: 0,
      capHeight: 0.5,
      turnDeg: 0,
      tracking: 0.1,
      fit: 'natural',
    },
  ],
};

describe('bridges by hand', () => {
  let faces: FaceSource;
  let plate: PlateResult;
  const made = (design: Design) => makePlate(design, 'p', faces, createStore(), BUILT_IN);
  const first = () => plate.bridges[0]!;
  const raised = (b: { from: { x: number; y: number }; to: { x: number; y: number } }, mm: number) => ({
    from: { x: b.from.x + mm, y: b.from.y },
    to: { x: b.to.x + mm, y: b.to.y },
  });

  beforeAll(async () => {
    ({ faces } = await loadFaces(START));
    plate = made(START);
  });

  it('make a bridge of the tool one of the person, and bar its former place, as one change', () => {
    const change = keepBridge(START, plate, first(), raised(first(), 3), 'step');
    expect(change.design.bridges.edits.map((e) => e.kind)).toEqual(['keep', 'drop']);
    expect(countedEdits(change.design.bridges.edits)).toHaveLength(1);
    expect(designSchema.safeParse(change.design).success).toBe(true);
    const after = made(change.design);
    expect(after.bridges.filter((b) => b.editId === change.editId)).toHaveLength(1);
    expect(after.bridges).toHaveLength(plate.bridges.length);
    expect(after.verdict).toBe(plate.verdict);
  });

  it('join the presses of a key in one step', () => {
    const store = createDesignStore(START);
    const now = () => store.getState();
    const change = keepBridge(START, plate, first(), raised(first(), 0.5), 'merge');
    now().apply(change);
    const edit = { ...first(), editId: change.editId! };
    for (let i = 2; i < 6; i++) {
      now().apply(keepBridge(now().history.present, plate, edit, raised(first(), 0.5 * i), 'merge'));
    }
    expect(now().history.past).toHaveLength(1);
    now().undo();
    expect(now().history.present).toBe(START);
  });

  it('edit the same edit again and keep its id', () => {
    const one = keepBridge(START, plate, first(), raised(first(), 2), 'step');
    const again = made(one.design).bridges.find((b) => b.editId === one.editId)!;
    const two = keepBridge(one.design, plate, again, { widthMm: 2 * plate.rules.leastBridgeMm }, 'step');
    expect(two.editId).toBe(one.editId);
    expect(two.design.bridges.edits).toHaveLength(2);
    expect(two.design.bridges.edits[0]).toMatchObject({ id: one.editId, widthShare: 2 });
  });

  it('remove: of the tool by barring the place, of the person by taking the edit back too', () => {
    const own = dropBridge(START, plate, first());
    expect(own.design.bridges.edits).toMatchObject([{ kind: 'drop' }]);
    const one = keepBridge(START, plate, first(), raised(first(), 2), 'step');
    const mine = made(one.design).bridges.find((b) => b.editId === one.editId)!;
    const gone = dropBridge(one.design, plate, mine);
    expect(gone.design.bridges.edits.map((e) => e.kind)).toEqual(['drop', 'drop']);
  });

  it('add where something is cut away, and nowhere else', () => {
    const left = (ring: readonly { readonly x: number }[]) => Math.min(...ring.map((p) => p.x));
    const opening = plate.openings.map((o) => o.region.outer).sort((a, b) => left(a) - left(b))[0]!;
    const box = [Math.min(...opening.map((p) => p.x)), Math.max(...opening.map((p) => p.x))] as const;
    // A little inside the letter's left edge, at the height of its middle.
    const middle = (Math.min(...opening.map((p) => p.y)) + Math.max(...opening.map((p) => p.y))) / 2;
    const change = addBridge(START, plate, { x: box[0] + 2, y: middle });
    expect(change.editId).toBeDefined();
    const after = made(change.design);
    const bar = after.bridges.find((b) => b.editId === change.editId)!;
    // Straight across an upright stroke is level.
    expect(Math.abs(bar.from.y - bar.to.y)).toBeLessThan(0.1);
    expect(after.bridges).toHaveLength(plate.bridges.length + 1);
    expect(addBridge(START, plate, { x: 0, y: 190 })).toEqual({ design: START, undo: 'step' });
  });

  it('stop at the number a design can carry, and lose nothing', () => {
    const drop = dropBridge(START, plate, first()).design.bridges.edits[0]!;
    const edits = Array.from({ length: MOST_EDITS }, (_, i) => ({ ...drop, id: `d${i}` }));
    const full = { ...START, bridges: { ...START.bridges, edits } };
    expect(designSchema.safeParse(full).success).toBe(true);
    expect(keepBridge(full, plate, first(), raised(first(), 1), 'step').design).toBe(full);
    expect(dropBridge(full, plate, first()).design).toBe(full);
  });

  it('give back one, a letter, or all; removing the text takes them along', () => {
    const one = keepBridge(START, plate, first(), raised(first(), 2), 'step').design;
    const last = plate.bridges.find((b) => b.shapeId === 'name/1')!;
    const two = dropBridge(one, plate, last).design;
    expect(two.bridges.edits).toHaveLength(3);
    expect(forgetEditsOn(two, 'name/0').design.bridges.edits).toHaveLength(1);
    expect(forgetEditsOn(two, 'name/1').design.bridges.edits).toHaveLength(2);
    expect(forgetEdits(two, 'all').design.bridges.edits).toEqual([]);
    expect(forgetEdits(START, 'all').design).toBe(START);
    expect(removeElement(two, 'name').design.bridges.edits).toEqual([]);
    const id = two.bridges.edits[2]!.id;
    const mended = applyMend(two, { kind: 'forget-edits', editIds: [id] });
    expect(mended.undo).toBe('step');
    expect(mended.design.bridges.edits.map((e) => e.id)).not.toContain(id);
  });

  it('take a manner for one element, and the design’s own again', () => {
    const upright = setManner(START, 'name', 'upright').design;
    expect(upright.elements[0]?.manner).toBe('upright');
    expect(setManner(upright, 'name', 'upright').design).toBe(upright);
    const back = setManner(upright, 'name', undefined).design;
    expect(back).toEqual(START);
    expect('manner' in back.elements[0]!).toBe(false);
  });
});
