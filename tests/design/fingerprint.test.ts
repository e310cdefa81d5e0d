import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { isLifted } from '../../geometry/barrel/finger-room.ts';
import { sideMeasures } from '../../geometry/barrel/side-measures.ts';
import { canonicalJson } from '../../geometry/design/canonical-json.ts';
import { emptyDesign, newRingText } from '../../geometry/design/defaults.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { printInName, showFingerprint } from '../../geometry/design/show-fingerprint.ts';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Design, Side } from '../../geometry/design/schema.ts';

const base: Design = {
  ...emptyDesign(),
  head: { source: { kind: 'measured', alongMm: 533, acrossMm: 528 }, clearanceMm: 6, crownMm: 0 },
  elements: [newRingText('top', 'own:0badf00d'), newRingText('bottom', 'cinzel-700')],
  ownFaces: [
    { id: 'own:0badf00d', name: 'Mine', data: 'AAAA' },
    { id: 'own:00000001', name: 'Unused', data: 'BBBB' },
  ],
};
const print = fingerprintOf(base);
const first = (d: Design) => d.elements[0] as (typeof d.elements)[number];

describe('the fingerprint', () => {
  it('is 64 hex digits, of which 16 are shown in groups of four', () => {
    expect(print).toMatch(/^[0-9a-f]{64}$/);
    expect(showFingerprint(print).replaceAll(' ', '')).toBe(printInName(print));
    expect(printInName(print)).toBe(print.slice(0, 16));
    expect(showFingerprint(print)).toMatch(/^[0-9a-f]{4}( [0-9a-f]{4}){3}$/);
    expect(showFingerprint('0a1b2c3d')).toBe('0a1b 2c3d');
  });

  it.each<[string, (d: Design) => Design]>([
    [
      'the text',
      (d) => ({ ...d, elements: [{ ...newRingText('top', 'own:0badf00d'), text: 'OTHER' }, ...d.elements.slice(1)] }),
    ],
    ['the order of elements', (d) => ({ ...d, elements: [...d.elements].reverse() })],
    ['an element less', (d) => ({ ...d, elements: [first(d)] })],
    [
      'a head diameter',
      (d) => ({ ...d, head: { ...d.head, source: { kind: 'measured', alongMm: 533, acrossMm: 527 } } }),
    ],
    ['the clearance', (d) => ({ ...d, head: { ...d.head, clearanceMm: 7 } })],
    ['the thickness', (d) => ({ ...d, stock: { ...d.stock, thicknessMm: 2 } })],
    ['paint to torch', (d) => ({ ...d, stock: { ...d.stock, use: 'torch' } })],
    ['the bridges', (d) => ({ ...d, bridges: { ...d.bridges, width: { mm: 4 } } })],
    ['a plate diameter', (d) => ({ ...d, plates: d.plates.map((p) => ({ ...p, diameter: { mm: 300 } })) })],
    ['the data of a font in use', (d) => ({ ...d, ownFaces: d.ownFaces.map((f) => ({ ...f, data: 'CCCC' })) })],
  ])('changes with %s', (_, change) => {
    expect(fingerprintOf(change(base))).not.toBe(print);
  });

  it.each<[string, (d: Design) => Design]>([
    ['the title', (d) => ({ ...d, title: 'Another' })],
    ['the order', (d) => ({ ...d, order: { ...d.order, who: 'Marrow Lane Perry', notes: 'soon' } })],
    ['an approval', (d) => ({ ...d, approval: { name: 'O. B.', at: '2027-05-01', how: 'link', fingerprint: print } })],
    [
      'quantities, names, ids and order of plates',
      (d) => ({ ...d, plates: d.plates.map((p) => ({ ...p, id: `x${p.id}`, name: 'Plate', quantity: 9 })).reverse() }),
    ],
    ['ids of elements', (d) => ({ ...d, elements: d.elements.map((e) => ({ ...e, id: `x${e.id}` })) })],
    ['the crown', (d) => ({ ...d, head: { ...d.head, crownMm: 4 } })],
    ['a font that is not used', (d) => ({ ...d, ownFaces: d.ownFaces.slice(0, 1) })],
    ['the order of keys', (d) => Object.fromEntries(Object.entries(d).reverse()) as unknown as Design],
  ])('stays with %s', (_, change) => {
    expect(fingerprintOf(change(base))).toBe(print);
  });

  it('does not depend on the head when every plate has a diameter of its own', () => {
    const plates = base.plates.map((p) => ({ ...p, diameter: { mm: 400 } }));
    const other = { ...base.head, clearanceMm: 9 };
    expect(fingerprintOf({ ...base, plates, head: other })).toBe(fingerprintOf({ ...base, plates }));
  });

  it('does depend on it where openings to lift the plate by are cut or left out by its room and its depth', () => {
    const lifted: Design = {
      ...base,
      plates: base.plates.map((p) => ({ ...p, diameter: { mm: 516 } })),
      lifting: { shape: 'holes', count: 2, firstDeg: 90, at: 0.9 },
    };
    const wide = { ...base.head, source: { kind: 'measured', alongMm: 560, acrossMm: 560 } } as const;
    expect([base.head, wide].map((head) => isLifted({ ...lifted, head }, 516))).toEqual([true, false]);
    expect(fingerprintOf({ ...lifted, head: wide })).not.toBe(fingerprintOf(lifted));
    const deep = { ...wide, recessMm: 80 };
    expect(isLifted({ ...lifted, head: deep }, 516)).toBe(true);
    expect(fingerprintOf({ ...lifted, head: deep })).not.toBe(fingerprintOf({ ...lifted, head: wide }));
  });

  it('does depend on the barrel that a plate is rolled for, when its bilge comes from the table', () => {
    const rolled = (barrel: string): Design => ({
      ...base,
      head: { ...base.head, source: { kind: 'barrel', barrel } },
      surface: { kind: 'side', lines: 'along-hoops', spread: true },
      plates: base.plates.map((p) => ({ ...p, diameter: { mm: 200 } })),
    });
    const [a, b] = [rolled('american-53'), rolled('puncheon-500')];
    expect(sideMeasures(a.head, a.surface as Side)).not.toEqual(sideMeasures(b.head, b.surface as Side));
    expect(fingerprintOf(a)).not.toBe(fingerprintOf(b));
  });
});

describe('its parts', () => {
  it('canonical JSON sorts keys at every depth and keeps lists as they are', () => {
    expect(canonicalJson({ b: [{ z: 1, a: -0 }], a: undefined, B: null })).toBe('{"B":null,"b":[{"a":0,"z":1}]}');
  });

  // FIPS 180-4, the published one-block example "abc"; and Node's own implementation.
  it('the hash is SHA-256', () => {
    const hex = (text: string) => bytesToHex(sha256(utf8ToBytes(text)));
    expect(hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    const long = 'Fässer für Perry — № 12 '.repeat(400);
    expect(hex(long)).toBe(createHash('sha256').update(long, 'utf8').digest('hex'));
  });
});
