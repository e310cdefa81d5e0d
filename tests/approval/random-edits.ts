import fc from 'fast-check';
import { isText } from '../../geometry/design/kinds.ts';
import { designSchema, type Design, type DesignElement } from '../../geometry/design/schema.ts';

/** One change of a design, of anything that it holds. What does not suit leaves it as it is. */
type Edit = (design: Design) => Design;

const share = fc.double({ min: 0, max: 1, noNaN: true });
const small = fc.oneof(share, fc.constantFrom(0.5, 0.25, 0.75, 1e-7, 0.1));
const deg = fc.oneof(fc.integer({ min: -360, max: 360 }), fc.double({ min: -360, max: 360, noNaN: true }));
const nth = fc.nat(20);
const text = fc.oneof(
  fc.constantFrom('OAK', 'OAT', '', '  ', 'MARROW LANE'),
  fc.string({ unit: 'grapheme', maxLength: 8 }),
);
const manner = fc.constantFrom(undefined, 'hidden' as const, 'upright' as const, 'band' as const);
const diameter = fc.oneof(
  fc.constant('fit' as const),
  fc.record({ share: fc.double({ min: 0.01, max: 1, noNaN: true }) }),
  fc.record({ mm: fc.double({ min: 100, max: 900, noNaN: true }) }),
);
const fit = fc.oneof(
  fc.constant('natural' as const),
  fc.record({
    spanDeg: fc.double({ min: 1, max: 360, noNaN: true }),
    by: fc.constantFrom('size' as const, 'spacing' as const),
  }),
  fc.record({
    width: fc.double({ min: 0.01, max: 2, noNaN: true }),
    by: fc.constantFrom('size' as const, 'spacing' as const),
  }),
);

function onElement(at: number, change: (element: DesignElement) => object): Edit {
  return (design) => {
    const place = at % Math.max(design.elements.length, 1);
    const elements = design.elements.map((e, i) => (i === place ? { ...e, ...change(e) } : e));
    return { ...design, elements };
  };
}

/** Of the parts, those that the element has. */
function where(element: object, parts: object): object {
  return Object.fromEntries(Object.entries(parts).filter(([name]) => name in element));
}

const elementEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(nth, text).map(([at, typed]) => onElement(at, (e) => where(e, { text: typed }))),
  fc
    .tuple(nth, fc.constantFrom('tinos-400', 'libre-caslon-text-700', 'stardos-stencil'))
    .map(([at, face]) => onElement(at, (e) => where(e, { face }))),
  fc.tuple(nth, small, small).map(([at, inner, outer]) => onElement(at, (e) => where(e, { inner, outer }))),
  fc
    .tuple(nth, small)
    .map(([at, by]) =>
      onElement(at, (e) => ('inner' in e ? { inner: e.inner + by / 10, outer: e.outer + by / 10 } : {})),
    ),
  fc.tuple(nth, deg).map(([at, turn]) => onElement(at, (e) => where(e, { middleDeg: turn, turnDeg: turn }))),
  fc.tuple(nth, small, small).map(([at, x, y]) => onElement(at, (e) => where(e, { x, y }))),
  fc
    .tuple(nth, fc.double({ min: 0.005, max: 2, noNaN: true }))
    .map(([at, size]) => onElement(at, (e) => where(e, { size, capHeight: size }))),
  fc.tuple(nth, small).map(([at, tracking]) => onElement(at, (e) => where(e, { tracking }))),
  fc.tuple(nth, fit).map(([at, wanted]) =>
    onElement(at, (e) => {
      if (!isText(e)) return {};
      const suits = wanted === 'natural' || (e.kind === 'ringText' ? 'spanDeg' in wanted : 'width' in wanted);
      return suits ? { fit: wanted } : {};
    }),
  ),
  fc.tuple(nth, fc.constantFrom('outward', 'inward')).map(([at, reads]) => onElement(at, (e) => where(e, { reads }))),
  fc
    .tuple(nth, fc.constantFrom('ring', 'dashes', 'beads', 'rope'))
    .map(([at, style]) => onElement(at, (e) => where(e, { style }))),
  fc
    .tuple(nth, fc.oneof(fc.constant('auto'), fc.integer({ min: 2, max: 720 })))
    .map(([at, count]) => onElement(at, (e) => where(e, { count }))),
  fc
    .tuple(nth, fc.constantFrom('star', 'heart', 'anchor', 'grainEar', 'constructor'))
    .map(([at, motif]) => onElement(at, (e) => where(e, { motif }))),
  fc
    .tuple(nth, fc.integer({ min: 3, max: 9 }))
    .map(([at, points]) => onElement(at, (e) => (e.kind === 'motif' ? { options: { points } } : {}))),
  fc
    .tuple(nth, fc.boolean())
    .map(([at, mirrored]) =>
      onElement(at, (e) => ('around' in e && (e.mirrored ?? false) !== mirrored ? { mirrored } : {})),
    ),
  fc
    .tuple(nth, fc.integer({ min: 2, max: 72 }))
    .map(([at, count]) => onElement(at, (e) => where(e, { around: { count } }))),
  fc.tuple(nth, manner).map(([at, kind]) => onElement(at, () => (kind === undefined ? {} : { manner: kind }))),
  fc.tuple(nth, fc.boolean()).map(([at, locked]) => onElement(at, () => ({ locked }))),
  fc.nat(99).map(
    (n): Edit =>
      (design) =>
        onElement(n, () => ({ id: `renamed-${n}` }))(design),
  ),
  nth.map((at): Edit => (design) => ({ ...design, elements: design.elements.filter((_, i) => i !== at % 7) })),
  fc.tuple(nth, nth).map(([from, to]): Edit => (design) => {
    const elements = [...design.elements];
    const [moved] = elements.splice(from % Math.max(elements.length, 1), 1);
    if (moved) elements.splice(to % (elements.length + 1), 0, moved);
    return { ...design, elements };
  }),
  fc.tuple(nth, fc.nat(99)).map(([at, n]): Edit => (design) => {
    const copied = design.elements[at % Math.max(design.elements.length, 1)];
    if (!copied || design.elements.some((e) => e.id === `copy-${n}`)) return design;
    return { ...design, elements: [...design.elements, { ...copied, id: `copy-${n}` }] };
  }),
);

const plateEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(nth, diameter).map(([at, wanted]): Edit => (design) => ({
    ...design,
    plates: design.plates.map((p, i) => (i === at % design.plates.length ? { ...p, diameter: wanted } : p)),
  })),
  fc.tuple(nth, fc.integer({ min: 1, max: 99 })).map(([at, quantity]): Edit => (design) => ({
    ...design,
    plates: design.plates.map((p, i) =>
      i === at % design.plates.length ? { ...p, quantity, name: `Plate ${quantity}` } : p,
    ),
  })),
  diameter.map((wanted): Edit => (design) => {
    if (design.plates.length >= 12) return design;
    const id = `plate-${design.plates.length}-${design.elements.length}`;
    if (design.plates.some((p) => p.id === id)) return design;
    return { ...design, plates: [...design.plates, { id, name: 'Another', diameter: wanted, quantity: 1 }] };
  }),
  nth.map(
    (at): Edit =>
      (design) =>
        design.plates.length < 2
          ? design
          : { ...design, plates: design.plates.filter((_, i) => i !== at % design.plates.length) },
  ),
  fc.tuple(nth, nth).map(([at, around]): Edit => (design) => {
    const masks = design.plates[around % design.plates.length]?.id ?? '';
    const id = `ring-${at}`;
    if (design.plates.length >= 12 || design.plates.some((p) => p.id === id)) return design;
    return { ...design, plates: [...design.plates, { id, name: 'Ring', diameter: { mm: 600 }, quantity: 1, masks }] };
  }),
  fc
    .tuple(fc.constantFrom('holes' as const, 'slots' as const), fc.integer({ min: 1, max: 6 }), small)
    .map(([shape, count, at]): Edit => (design) => ({ ...design, lifting: { shape, count, firstDeg: 90, at } })),
  fc.constant<Edit>(({ lifting: _, ...design }) => design),
);

const stockEdit: fc.Arbitrary<Edit> = fc
  .record(
    {
      material: fc.constantFrom('mild-steel', 'stainless-304', 'unobtainium'),
      thicknessMm: fc.double({ min: 0.05, max: 60, noNaN: true }),
      process: fc.constantFrom('fibre-laser', 'water-jet', 'teeth'),
      use: fc.constantFrom('paint' as const, 'torch' as const),
    },
    { requiredKeys: [] },
  )
  .map((part) => (design) => ({ ...design, stock: { ...design.stock, ...part } }));

const headEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc
    .double({ min: 0, max: 200, noNaN: true })
    .map((clearanceMm): Edit => (d) => ({ ...d, head: { ...d.head, clearanceMm } })),
  fc
    .double({ min: 0, max: 200, noNaN: true })
    .map((recessMm): Edit => (d) => ({ ...d, head: { ...d.head, recessMm } })),
  fc.double({ min: 0, max: 90, noNaN: true }).map((crownMm): Edit => (d) => ({ ...d, head: { ...d.head, crownMm } })),
  fc
    .constantFrom('american-53', 'butt', 'no-such')
    .map((barrel): Edit => (d) => ({ ...d, head: { ...d.head, source: { kind: 'barrel', barrel } } })),
  fc.tuple(fc.integer({ min: 300, max: 700 }), small).map(([alongMm, by]): Edit => (d) => ({
    ...d,
    head: { ...d.head, source: { kind: 'measured', alongMm, acrossMm: alongMm - by } },
  })),
  fc.constant<Edit>((d) => ({ ...d, surface: 'head' })),
  fc
    .constantFrom('along-hoops' as const, 'up-staves' as const)
    .map((lines): Edit => (d) => ({ ...d, surface: { kind: 'side', lines, spread: true } })),
);

const bridgeEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc
    .oneof(fc.constant('auto' as const), fc.record({ mm: fc.double({ min: 0.1, max: 100, noNaN: true }) }))
    .map((width): Edit => (d) => ({ ...d, bridges: { ...d.bridges, width } })),
  fc
    .constantFrom('hidden' as const, 'upright' as const, 'band' as const)
    .map((kind): Edit => (d) => ({ ...d, bridges: { ...d.bridges, manner: kind } })),
  fc.tuple(nth, small, fc.nat(99), fc.boolean()).map(([at, x, n, lost]): Edit => (d) => {
    const element = lost ? `gone-${at}` : d.elements[at % Math.max(d.elements.length, 1)]?.id;
    if (element === undefined) return d;
    const edit = { kind: 'drop' as const, id: `edit-${n}`, element, shape: 0, label: 'letter O', at: { x, y: 0.5 } };
    return { ...d, bridges: { ...d.bridges, edits: [...d.bridges.edits, edit] } };
  }),
  fc.constant<Edit>((d) => ({ ...d, bridges: { ...d.bridges, edits: d.bridges.edits.toReversed() } })),
);

const paperEdit: fc.Arbitrary<Edit> = fc.oneof(
  text.map((title): Edit => (d) => ({ ...d, title })),
  text.map((notes): Edit => (d) => ({ ...d, order: { ...d.order, notes } })),
);

const ownFace = fc.constantFrom('AAAA', 'BBBB').map((data): Edit => (d) => ({
  ...d,
  ownFaces: [{ id: 'own:0123abcd', name: 'Mine', data }],
  elements: d.elements.map((e, i) => (i === 0 && isText(e) ? { ...e, face: 'own:0123abcd' } : e)),
}));

/** Some changes one after another; a result that no design may be counts as no change. */
export const someEdits: fc.Arbitrary<Edit> = fc
  .array(fc.oneof(elementEdit, elementEdit, plateEdit, stockEdit, headEdit, bridgeEdit, paperEdit, ownFace), {
    minLength: 1,
    maxLength: 4,
  })
  .map((edits) => (design) => {
    const edited = edits.reduce((d, edit) => edit(d), design);
    return designSchema.safeParse(edited).success ? edited : design;
  });
