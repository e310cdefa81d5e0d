import { acceptFinding } from '../../geometry/approval/acceptances.ts';
import { approve, withdrawApproval } from '../../geometry/approval/approve.ts';
import { offerOf, withOffer } from '../../geometry/approval/offer.ts';
import { addOption, chooseOption } from '../../geometry/approval/options.ts';
import { bringBack, keepRevision } from '../../geometry/approval/revisions.ts';
import { newLineText } from '../../geometry/design/defaults.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design, Offer, PlateSpec } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import type { Finding } from '../../geometry/findings.ts';
import type { Quote } from '../../geometry/shop/quote.ts';
import { packDesign } from '../../web/handover/link/pack-design.ts';
import { readLink } from '../../web/handover/link/read-link.ts';
import { takeApproval } from '../../web/state/actions/agreed/take-approval.ts';
import { handDesign } from '../files/hand-plate.ts';

/** holds, changed, unbound: the approval says nothing of it; open: nobody approved. */
export type Truth = 'holds' | 'changed' | 'unbound' | 'open';

/** One thing that happens to a design that was offered and approved, and what is true afterwards, judged by hand. */
export interface ChangeCase {
  readonly name: string;
  readonly design: Design;
  readonly drawing: Truth;
  readonly order: Truth;
}

const AT = '2027-01-04T09:30:00+01:00';

export function priced(totalMinor: number, currency = 'EUR'): Quote {
  const line = { code: 'plate', count: 1, unit: 'pieces', each: totalMinor / 100, minor: totalMinor } as const;
  return { currency, lines: [line], netMinor: totalMinor, totalMinor, steps: [], validDays: 30 };
}

function offering(design: Design, number: string, quote: Quote | undefined): Offer {
  return offerOf(design, { fingerprint: fingerprintOf(design), made: '2027-01-02', number, quote });
}

function approved(design: Design, name = 'Ada Pell'): Design {
  return approve(design, { name, at: AT, how: 'link', fingerprint: fingerprintOf(design) });
}

function plate(id: string, mm: number, quantity: number): PlateSpec {
  return { id, name: id === 'large' ? 'Large' : 'Half', diameter: { mm }, quantity };
}

const BARE: Design = addOption(
  handDesign({
    title: 'Oak',
    elements: [{ ...newLineText('e1', 'stardos-stencil-700'), text: 'OAK' }],
    plates: [plate('large', 500, 12), plate('half', 250, 3)],
    order: { who: 'Ada Pell', reference: '27-118', neededBy: '2027-06-12', notes: '' },
  }),
  { name: 'Small', plates: [plate('large', 400, 12), plate('half', 250, 3)] },
);
const AGREED = approved({ ...BARE, offer: offering(BARE, '2027-K7QMP-1', priced(94_752)) });
const { approval: APPROVAL } = AGREED;

function plates(change: (p: PlateSpec, i: number) => PlateSpec | undefined): Design {
  return { ...AGREED, plates: AGREED.plates.flatMap((p, i) => change(p, i) ?? []) };
}

const counts = (large: number, half = 3): Design =>
  plates((p) => ({ ...p, quantity: p.id === 'large' ? large : half }));

function text(typed: string): Design {
  return { ...AGREED, elements: AGREED.elements.map((e) => ('text' in e ? { ...e, text: typed } : e)) };
}

function reread(written: string): Design {
  const read = readDesign(written);
  if ('problem' in read) throw new Error(read.problem);
  return read.design;
}

/** The saved file with one thing in it put in place of another, by hand. */
function edited(from: RegExp, to: string): Design {
  const before = designText(AGREED);
  const after = before.replace(from, to);
  if (after === before) throw new Error(`nothing to edit: ${from.source}`);
  return reread(after);
}

function throughLink(design: Design): Design {
  const packed = packDesign(design);
  const read = 'fragment' in packed ? readLink(packed.fragment) : packed;
  if (!('design' in read)) throw new Error('no link');
  return read.design;
}

function otherPrice(number: string, quote: Quote | undefined): Design {
  return { ...AGREED, offer: offering(AGREED, number, quote) };
}

/** An approval of the customer's that comes back to the shop's own design, by whatever it holds by then. */
function cameBack(own: Design, theirs: Design): Design {
  return takeApproval(own, approved(theirs), fingerprintOf(own)).design;
}

function cut(change: Partial<Design>): Design {
  return { ...AGREED, ...change };
}

const { approval: _, ...UNAPPROVED } = AGREED;
const { offer: __, ...WITHOUT_OFFER } = AGREED;
const { offer: ___, ...OLD_APPROVAL } = APPROVAL!;
const OLDER: Design = { ...WITHOUT_OFFER, approval: OLD_APPROVAL };
const FINDING = { code: 'thin', severity: 'look', elementIds: [], place: { kind: 'plate' } } as unknown as Finding;
const now = { at: AT, why: '', fingerprint: fingerprintOf(AGREED) };
const six: Design = { ...(UNAPPROVED as Design), plates: counts(6).plates };

const both = (name: string, design: Design): ChangeCase => ({ name, design, drawing: 'holds', order: 'holds' });
const order = (name: string, design: Design): ChangeCase => ({ name, design, drawing: 'holds', order: 'changed' });
const drawing = (name: string, design: Design): ChangeCase => ({ name, design, drawing: 'changed', order: 'holds' });
const neither = (name: string, design: Design): ChangeCase => ({ name, design, drawing: 'changed', order: 'changed' });
const open = (name: string, design: Design): ChangeCase => ({ name, design, drawing: 'open', order: 'open' });
const unbound = (name: string, design: Design): ChangeCase => ({ name, design, drawing: 'holds', order: 'unbound' });

export const CHANGES: readonly ChangeCase[] = [
  both('nothing', AGREED),
  // quantities
  order('12 become 6', counts(6)),
  order('12 become 13', counts(13)),
  order('12 become 50', counts(50)),
  order('12 become 100,000', counts(100_000)),
  order('the half ones become 4', counts(12, 4)),
  order('quantities of the two are exchanged', counts(3, 12)),
  both('50 and back to 12', withOffer(counts(50), APPROVAL!.offer!)),
  // plates
  order(
    'the half plate is taken out and a twin of the large put in',
    plates((p) => (p.id === 'half' ? { ...p, id: 'twin' } : p)),
  ),
  order('a second plate of the same size is added', { ...AGREED, plates: [...AGREED.plates, plate('third', 500, 1)] }),
  neither('a plate of another size is added', { ...AGREED, plates: [...AGREED.plates, plate('third', 300, 1)] }),
  neither(
    'the half plate is taken out',
    plates((p) => (p.id === 'half' ? undefined : p)),
  ),
  neither(
    'the large plate is larger',
    plates((p) => (p.id === 'large' ? { ...p, diameter: { mm: 510 } } : p)),
  ),
  order(
    'sizes of the two are exchanged',
    plates((p) => ({ ...p, diameter: { mm: p.id === 'large' ? 250 : 500 } })),
  ),
  order(
    'a plate is called differently',
    plates((p) => (p.id === 'half' ? { ...p, name: 'Small' } : p)),
  ),
  both('plates stand in another order', { ...AGREED, plates: [...AGREED.plates].reverse() }),
  // title, customer, date, notes
  order('another title', cut({ title: 'Elm' })),
  order('no title', cut({ title: '' })),
  both('another customer', cut({ order: { ...AGREED.order, who: 'Ben Oke' } })),
  both('another day it is needed by', cut({ order: { ...AGREED.order, neededBy: '2028-01-01' } })),
  both('another reference', cut({ order: { ...AGREED.order, reference: '28-1' } })),
  both('notes', cut({ order: { ...AGREED.order, notes: 'Call first' } })),
  // offers, price file, tax, currency, finish
  order('a new offer, same price', otherPrice('2027-K7QMP-2', priced(94_752))),
  order('a new offer, dearer', otherPrice('2027-K7QMP-2', priced(99_999))),
  order('a new offer, cheaper', otherPrice('2027-K7QMP-2', priced(1))),
  order('the offer edited: same number, other total', otherPrice('2027-K7QMP-1', priced(500))),
  order('a new offer in another currency', otherPrice('2027-K7QMP-2', priced(94_752, 'USD'))),
  order('a new offer with the price on request', otherPrice('2027-K7QMP-2', undefined)),
  both('the offer is left out of the file', WITHOUT_OFFER),
  order(
    'a new offer after 12 became 50',
    (() => {
      const fifty = counts(50);
      return { ...fifty, offer: offering(fifty, '2027-K7QMP-2', priced(334_268)) };
    })(),
  ),
  // what is cut
  drawing('another letter', text('OAT')),
  drawing('a letter less', text('OA')),
  drawing('no letter', text('')),
  drawing(
    'another face',
    cut({ elements: AGREED.elements.map((e) => ('face' in e ? { ...e, face: 'tinos-400' } : e)) }),
  ),
  drawing('another sheet', cut({ stock: { ...AGREED.stock, thicknessMm: 3 } })),
  drawing('another material', cut({ stock: { ...AGREED.stock, material: 'mild-steel' } })),
  drawing('another use', cut({ stock: { ...AGREED.stock, use: 'torch' } })),
  drawing('bridges as bands', cut({ bridges: { ...AGREED.bridges, manner: 'band' } })),
  drawing('lifting holes', cut({ lifting: { shape: 'holes', count: 2, firstDeg: 90, at: 0.9 } })),
  neither('another letter and 50', { ...text('OAT'), plates: counts(50).plates }),
  both(
    'another letter and what was approved brought back',
    bringBack(text('OAT'), 'A', { ...now, fingerprint: fingerprintOf(text('OAT')) }),
  ),
  both('50 and what was approved brought back', bringBack(counts(50), 'A', now)),
  both('an element is locked', cut({ elements: AGREED.elements.map((e) => ({ ...e, locked: true })) })),
  // options
  neither('an option is taken', chooseOption(AGREED, 'option-1', 'before')),
  both('an option is added', addOption(AGREED, { name: 'Other' })),
  both(
    'a taken option that came back approved',
    cameBack(chooseOption(UNAPPROVED, 'option-1'), chooseOption(BARE, 'option-1')),
  ),
  // files, links, edits
  both('saved and opened', reread(designText(AGREED))),
  both('through a link', throughLink(AGREED)),
  order('50 through a link', throughLink(counts(50))),
  drawing('another letter through a link', throughLink(text('OAT'))),
  order('an edited file with 500', edited(/"quantity": 12(?=\s*\}\s*,[^[\]]*\],\s*"revisions")/, '"quantity": 500')),
  drawing('an edited file with another approved fingerprint', {
    ...AGREED,
    approval: {
      ...APPROVAL!,
      fingerprint: 'f'.repeat(64),
      offer: { ...APPROVAL!.offer!, fingerprint: 'f'.repeat(64) },
    },
  }),
  order('an edited file with an offer of another drawing', {
    ...AGREED,
    approval: { ...APPROVAL!, offer: { ...APPROVAL!.offer!, fingerprint: 'f'.repeat(64) } },
  }),
  order('an edited file with 6 in the approval', {
    ...AGREED,
    approval: {
      ...APPROVAL!,
      offer: { ...APPROVAL!.offer!, plates: APPROVAL!.offer!.plates.map((p) => ({ ...p, quantity: 6 })) },
    },
  }),
  // approvals
  open('the approval is withdrawn', withdrawApproval(AGREED)),
  open('nobody approved', UNAPPROVED),
  both('somebody else approves too', approved(AGREED, 'Ben Oke')),
  both('50 approved anew', approved(counts(50))),
  order('the customer approved 6, kept as 12 by the shop', cameBack(UNAPPROVED, six)),
  both(
    'the customer approved 6, taken by the shop',
    withOffer(cameBack(UNAPPROVED, six), offering(six, '', undefined)),
  ),
  both('two tabs: the same answer taken twice', cameBack(cameBack(UNAPPROVED, UNAPPROVED), UNAPPROVED)),
  both('a revision is kept', keepRevision(AGREED, now)),
  both(
    'a finding is accepted',
    acceptFinding(AGREED, { finding: FINDING, plate: 'large', who: 'Ben Oke', at: AT, fingerprint: now.fingerprint }),
  ),
  // earlier versions
  unbound('an approval of version 3', OLDER),
  unbound('an approval of version 3, and 50', { ...OLDER, plates: counts(50).plates }),
  {
    name: 'an approval of version 3, and another letter',
    design: { ...OLDER, elements: text('OAT').elements },
    drawing: 'changed',
    order: 'unbound',
  },
  unbound('a file of version 3', reread(designText(OLDER).replace('"version": 4', '"version": 3'))),
];
