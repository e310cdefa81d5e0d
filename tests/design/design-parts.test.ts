import { describe, expect, it } from 'vitest';
import { motifById } from '../../geometry/motifs/catalogue.ts';
import { emptyDesign, newRingText } from '../../geometry/design/defaults.ts';
import { DESIGN_PARTS, FACE_PARTS, HEAD_PARTS, ORDER_PARTS, PLATE_PARTS } from '../../geometry/design/design-parts.ts';
import type { Bearing } from '../../geometry/design/design-parts.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { designSchema, headSchema, orderSchema, ownFaceSchema, plateSchema } from '../../geometry/design/schema.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { snapshotOf, withSnapshot } from '../../geometry/approval/snapshot.ts';
import { plateKey } from '../../web/handover/price/plate-key.ts';
import { havePlatesChanged } from '../../web/state/plates-changed.ts';
import { createRecentPlates } from '../../web/worker/recent-plates.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

const FACE = 'own:0badf00d';
const base: Design = {
  ...emptyDesign(),
  head: { source: { kind: 'measured', alongMm: 533, acrossMm: 528 }, clearanceMm: 6, crownMm: 0, recessMm: 20 },
  lifting: { shape: 'holes', count: 2, firstDeg: 90, at: 0.9 },
  plates: [
    { id: 'large', name: 'Large', diameter: 'fit', quantity: 1 },
    { id: 'half', name: 'Half', diameter: { share: 0.5 }, quantity: 1 },
    { id: 'ring', name: 'Ring', diameter: { mm: 600 }, quantity: 1, masks: 'large' },
  ],
  elements: [newRingText('top', FACE)],
  ownFaces: [{ id: FACE, name: 'Mine', data: 'AAAA' }],
  bridges: {
    width: 'auto',
    manner: 'hidden',
    edits: [{ kind: 'drop', id: 'edit-1', element: 'top', shape: 0, label: 'letter O', at: { x: 0, y: 0 } }],
  },
};
const plate = makePlate(base, 'large', { get: () => undefined, motif: motifById }, createStore(), BUILT_IN);

/** Asks each of the four whether it tells the two designs apart. */
function toldApart(now: Design) {
  const recent = createRecentPlates(2);
  recent.put(base, 'large', plate);
  return {
    fingerprint: fingerprintOf(base) !== fingerprintOf(now),
    page: havePlatesChanged(base, now),
    worker: recent.get(now, 'large') === undefined,
    proof: plateKey(base, 'large') !== plateKey(now, 'large'),
  };
}

/** A change of each part: the compiler asks for one wherever the schema gains a key. */
type Changes<T> = { readonly [K in keyof T]-?: T[K] };

const DESIGN: Changes<Omit<Design, 'format' | 'version' | 'order'>> = {
  title: 'Other',
  head: { ...base.head, clearanceMm: 9 },
  surface: { kind: 'side', lines: 'along-hoops', spread: true },
  lifting: { shape: 'slots', count: 2, firstDeg: 90, at: 0.9 },
  plates: base.plates.slice(0, 2),
  stock: { ...base.stock, thicknessMm: 3 },
  elements: [newRingText('bottom', FACE)],
  bridges: { ...base.bridges, width: { mm: 4 } },
  ownFaces: [{ id: FACE, name: 'Mine', data: 'BBBB' }],
  beginning: 'jubilee',
  approval: { name: 'Ada Pell', at: '2027-01-04', how: 'paper', fingerprint: 'f'.repeat(64) },
  offer: {
    number: '2027-K7QMP-1',
    made: '2027-01-04',
    fingerprint: 'f'.repeat(64),
    title: 'Other',
    plates: [{ id: 'large', name: 'Large', diameterMm: 500, quantity: 1 }],
  },
  home: 'an-own-design',
  options: [{ id: 'a', name: 'In steel' }],
  accepted: [{ code: 'thin', who: 'Ada Pell', at: '2027-01-04', fingerprint: 'f'.repeat(64) }],
  revisions: [{ letter: 'A', at: '2027-01-04', why: '', fingerprint: 'f'.repeat(64), design: snapshotOf(base) }],
};

describe('parts of a design', () => {
  it.each(Object.entries(DESIGN))('%s is told by each asker as the record says', (key, part) => {
    const isCut = DESIGN_PARTS[key as keyof typeof DESIGN] === 'cut';
    const found = toldApart({ ...base, [key]: part });
    expect(found).toEqual({ fingerprint: isCut, page: isCut, worker: isCut, proof: isCut });
  });

  const order: Changes<Design['order']> = { who: 'x', reference: 'x', neededBy: '2027-05-01', notes: 'x' };
  it.each(Object.entries(order))('%s of the order is shown anew where a finding speaks of it', (key, part) => {
    const isSaid = ORDER_PARTS[key as keyof typeof order] === 'said';
    const found = toldApart({ ...base, order: { ...base.order, [key]: part } });
    expect(found).toEqual({ fingerprint: false, page: isSaid, worker: false, proof: isSaid });
  });

  const plateChanges: Changes<Design['plates'][number]> = {
    id: 'other',
    name: 'Other',
    diameter: { mm: 400 },
    quantity: 7,
    masks: 'half',
  };
  it.each(Object.entries(plateChanges))('%s of a plate', (key, part) => {
    const bearing: Bearing = PLATE_PARTS[key as keyof typeof plateChanges];
    const found = toldApart({ ...base, plates: base.plates.map((p) => (p.id === 'ring' ? { ...p, [key]: part } : p)) });
    expect(found).toEqual({
      fingerprint: bearing === 'cut',
      page: true,
      worker: true,
      proof: bearing === 'cut' || bearing === 'id',
    });
  });

  const headChanges: Changes<Design['head']> = {
    source: { kind: 'barrel', barrel: 'american-53' },
    clearanceMm: 9,
    crownMm: 3,
    recessMm: 40,
  };
  it.each(Object.entries(headChanges))('%s of the head', (key, part) => {
    const isCut = HEAD_PARTS[key as keyof typeof headChanges] === 'cut';
    const found = toldApart({ ...base, head: { ...base.head, [key]: part } });
    expect(found).toEqual({ fingerprint: isCut, page: true, worker: true, proof: true });
  });

  it('of elements and edits ids, names and locks are not cut, and all else is', () => {
    const [text] = base.elements as [Design['elements'][number]];
    const withElement = (part: object) => toldApart({ ...base, elements: [{ ...text, ...part }] }).fingerprint;
    expect([withElement({ locked: true }), withElement({ manner: 'band' })]).toEqual([false, true]);
    const [edit] = base.bridges.edits as [Design['bridges']['edits'][number]];
    const withEdit = (part: object) =>
      toldApart({ ...base, bridges: { ...base.bridges, edits: [{ ...edit, ...part }] } }).fingerprint;
    expect([withEdit({ id: 'x' }), withEdit({ shape: 1 }), withEdit({ label: 'letter B' })]).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('the records name every key of the schema, and no other', () => {
    const keys = (schema: { readonly shape: object }) => Object.keys(schema.shape).sort();
    expect(Object.keys(DESIGN_PARTS).sort()).toEqual(keys(designSchema));
    expect(Object.keys(HEAD_PARTS).sort()).toEqual(keys(headSchema));
    expect(Object.keys(PLATE_PARTS).sort()).toEqual(keys(plateSchema));
    expect(Object.keys(FACE_PARTS).sort()).toEqual(keys(ownFaceSchema));
    expect(Object.keys(ORDER_PARTS).sort()).toEqual(keys(orderSchema));
  });

  it('a snapshot holds what is cut and brings it back whole', () => {
    const { lifting: _, ...plain } = base;
    expect(withSnapshot({ ...base, title: 'Later', stock: DESIGN.stock }, snapshotOf(plain))).toEqual(plain);
    expect(withSnapshot(plain, snapshotOf(base))).toEqual(base);
  });
});
