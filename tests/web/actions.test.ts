import { isBand } from '../../geometry/design/kinds.ts';
import { describe, expect, it } from 'vitest';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { LONGEST_TEXT } from '../../geometry/design/limits.ts';
import { designSchema, type Design } from '../../geometry/design/schema.ts';
import type { Mend } from '../../geometry/findings.ts';
import { addBorder } from '../../web/state/actions/elements/add-border.ts';
import { addLineText } from '../../web/state/actions/elements/add-line-text.ts';
import { addOwnFace, MOST_OWN_FACES } from '../../web/state/actions/elements/add-own-face.ts';
import { addPlate, MOST_PLATES } from '../../web/state/actions/plates/add-plate.ts';
import { addRingText } from '../../web/state/actions/elements/add-ring-text.ts';
import { applyMend } from '../../web/state/actions/apply-mend.ts';
import { measureHead } from '../../web/state/actions/plates/measure-head.ts';
import { pickBarrel } from '../../web/state/actions/plates/pick-barrel.ts';
import { removeElement } from '../../web/state/actions/elements/remove-element.ts';
import { removePlate } from '../../web/state/actions/plates/remove-plate.ts';
import { setBand } from '../../web/state/actions/elements/set-band.ts';
import { setFace } from '../../web/state/actions/elements/set-face.ts';
import { setOrder, setStock } from '../../web/state/actions/set-fields.ts';
import { setPlate } from '../../web/state/actions/plates/set-plate.ts';
import { setText } from '../../web/state/actions/elements/set-text.ts';
import { setTitle } from '../../web/state/actions/agreed/set-title.ts';

/** A ring text on top, one at the bottom, a line and a border. */
function fullDesign(): Design {
  let design = emptyDesign();
  for (const add of [addRingText, addRingText, addLineText, addBorder]) design = add(design).design;
  return design;
}

const elementOf = (design: Design, at: number) => {
  const element = design.elements[at];
  if (element === undefined) throw new Error(`no element ${at}`);
  return element;
};

describe('actions', () => {
  it('leave the design they were given as it was', () => {
    const design = fullDesign();
    const before = JSON.stringify(design);
    const { id } = elementOf(design, 0);
    setText(design, id, 'X');
    setBand(design, id, 0.2, 0.4);
    setFace(design, 'x-400');
    setPlate(design, 'half', { quantity: 3 });
    setStock(design, { use: 'torch' });
    setOrder(design, { who: 'Marrow Lane' });
    measureHead(design, 1, 2);
    removeElement(design, id);
    expect(JSON.stringify(design)).toBe(before);
  });

  it('give designs that the schema takes, whatever was typed', () => {
    const design = fullDesign();
    const { id } = elementOf(design, 0);
    const wild = [
      setText(design, id, 'x'.repeat(500)),
      setText(design, id, 'two\nlines\tand 🍐'),
      setTitle(design, 't'.repeat(500)),
      setBand(design, id, 7, -3),
      measureHead(design, -5, 0),
      pickBarrel(design, 'no-such-barrel'),
    ];
    for (const { design: next } of wild) expect(designSchema.safeParse(next).error).toBeUndefined();
    expect(elementOf(wild[0]?.design ?? design, 0)).toMatchObject({ text: 'x'.repeat(LONGEST_TEXT) });
    expect(elementOf(wild[1]?.design ?? design, 0)).toMatchObject({ text: 'two lines and 🍐' });
  });

  it('put a second ring text at the bottom, reading inward, on the same band', () => {
    const [top, bottom] = fullDesign().elements;
    expect(top).toMatchObject({ kind: 'ringText', middleDeg: 0, reads: 'outward' });
    expect(bottom).toMatchObject({ kind: 'ringText', middleDeg: 180, reads: 'inward' });
    if (top?.kind !== 'ringText' || bottom?.kind !== 'ringText') throw new Error('two ring texts expected');
    expect([bottom.inner, bottom.outer]).toEqual([top.inner, top.outer]);
  });

  it('put a second border where no band is taken', () => {
    const design = addBorder(fullDesign()).design;
    const bands = design.elements.flatMap((e) => (isBand(e) ? [e] : []));
    const added = bands.at(-1);
    if (added === undefined) throw new Error('a border expected');
    const others = bands.slice(0, -1);
    expect(others.every((b) => added.outer <= b.inner || added.inner >= b.outer)).toBe(true);
    expect(designSchema.safeParse(design).error).toBeUndefined();
  });

  it('never give two things one id', () => {
    let design = fullDesign();
    design = removeElement(design, elementOf(design, 0).id).design;
    for (const add of [addRingText, addRingText, addLineText]) design = add(design).design;
    design = removePlate(design, 'large').design;
    for (let i = 0; i < 20; i++) design = addPlate(design, 'More', 'fit').design;
    expect(new Set(design.elements.map((e) => e.id)).size).toBe(design.elements.length);
    expect(new Set(design.plates.map((p) => p.id)).size).toBe(design.plates.length);
    expect(design.plates).toHaveLength(MOST_PLATES);
  });

  it('keep the last plate', () => {
    const one = removePlate(emptyDesign(), 'half').design;
    expect(removePlate(one, 'large').design).toBe(one);
  });

  it('set the face of all texts or of one', () => {
    const design = fullDesign();
    const all = setFace(design, 'graduate-400').design;
    expect(all.elements.flatMap((e) => ('face' in e ? [e.face] : []))).toEqual(Array(3).fill('graduate-400'));
    const one = setFace(all, 'cinzel-700', elementOf(all, 1).id).design;
    expect(one.elements.flatMap((e) => ('face' in e ? [e.face] : []))).toEqual([
      'graduate-400',
      'cinzel-700',
      'graduate-400',
    ]);
  });

  it('carry at most eight fonts of one’s own, and drop only one that no text uses', () => {
    let design = fullDesign();
    const face = (n: number) => ({ id: `own:0000000${n}`, name: `Own ${n}`, data: 'AA==' });
    for (let n = 0; n < 9; n++) design = addOwnFace(design, face(n), elementOf(design, 0).id).design;
    expect(design.ownFaces).toHaveLength(MOST_OWN_FACES);
    expect(elementOf(design, 0)).toMatchObject({ face: 'own:00000008' });
    expect(design.ownFaces.some((f) => f.id === 'own:00000008')).toBe(true);
    expect(designSchema.safeParse(design).error).toBeUndefined();
  });
});

describe('mends', () => {
  const design = fullDesign();
  const ring = elementOf(design, 0);
  const line = elementOf(design, 2);
  const mends: readonly [Mend, (d: Design) => unknown, unknown][] = [
    [
      { kind: 'move-band', elementId: ring.id, inner: 0.5, outer: 0.6 },
      (d) => d.elements[0],
      { inner: 0.5, outer: 0.6 },
    ],
    [{ kind: 'set-tracking', elementId: ring.id, tracking: 0.3 }, (d) => d.elements[0], { tracking: 0.3 }],
    [{ kind: 'replace-text', elementId: line.id, text: 'No 7' }, (d) => d.elements[2], { text: 'No 7' }],
    [{ kind: 'set-face', elementId: line.id, face: 'oswald-700' }, (d) => d.elements[2], { face: 'oswald-700' }],
    [{ kind: 'set-stock', thicknessMm: 2, use: 'torch' }, (d) => d.stock, { thicknessMm: 2, use: 'torch' }],
    [
      { kind: 'set-plate-diameter', plateId: 'half', diameter: { mm: 300 } },
      (d) => d.plates[1],
      { diameter: { mm: 300 } },
    ],
    [{ kind: 'scale-text', elementId: line.id, share: 0.5 }, (d) => d.elements[2], { capHeight: 0.15 }],
  ];

  it.each(mends)('%o is one step and does what it says', (mend, pick, wanted) => {
    const change = applyMend(design, mend);
    expect(change.undo).toBe('step');
    expect(pick(change.design)).toMatchObject(wanted as object);
    expect(designSchema.safeParse(change.design).error).toBeUndefined();
  });

  it('scales a ring text about the middle of its band', () => {
    const scaled = applyMend(design, { kind: 'scale-text', elementId: ring.id, share: 0.5 }).design.elements[0];
    if (scaled?.kind !== 'ringText' || ring.kind !== 'ringText') throw new Error('a ring text expected');
    expect(scaled.inner + scaled.outer).toBeCloseTo(ring.inner + ring.outer, 12);
    expect(scaled.outer - scaled.inner).toBeCloseTo((ring.outer - ring.inner) / 2, 12);
  });

  it('leaves a stock mend’s unsaid parts alone', () => {
    const change = applyMend(design, { kind: 'set-stock', process: 'water-jet' });
    expect(change.design.stock).toEqual({ ...design.stock, process: 'water-jet' });
  });
});
