import { describe, expect, it } from 'vitest';
import { approve } from '../../geometry/approval/approve.ts';
import { offerHolds, offerNumber, offerOf, quoteOfOffer, withOffer } from '../../geometry/approval/offer.ts';
import { isAllApproved, orderWords, standingOf } from '../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { approvalOf } from '../../geometry/files/approval.ts';
import { writeOrderText } from '../../geometry/order-file/order-text.ts';
import type { Quote } from '../../geometry/shop/quote.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { approvalIsStale } from '../../web/worker/make-order.ts';
import { demo } from './demos.ts';

const PERRY = withQuantity(demo('makers-head'), 12);
const AT = '2027-01-04T09:30:00+01:00';

function quote(totalMinor: number): Quote {
  const line = { code: 'plate', count: 1, unit: 'pieces', each: totalMinor / 100, minor: totalMinor } as const;
  return { currency: 'EUR', lines: [line], netMinor: totalMinor, totalMinor, steps: [], validDays: 30 };
}

function withQuantity(design: Design, quantity: number): Design {
  return { ...design, plates: design.plates.map((p, i) => (i === 0 ? { ...p, quantity } : p)) };
}

function offered(design: Design, number: string, totalMinor: number): Design {
  const asked = { fingerprint: fingerprintOf(design), made: '2027-01-02', number, quote: quote(totalMinor) };
  return { ...design, offer: offerOf(design, asked) };
}

function approved(design: Design): Design {
  return approve(design, { name: 'Ada Pell', at: AT, how: 'link', fingerprint: fingerprintOf(design) });
}

function standing(design: Design) {
  const now = standingOf(design, fingerprintOf(design));
  if (now.kind === 'open') throw new Error('nobody approved it');
  return now;
}

/** What is wrong with the order, in words; empty where it is as approved. */
function said(design: Design): string {
  const { order } = standing(design);
  return order.kind === 'changed' ? orderWords(order).words.english : '';
}

const AGREED = approved(offered(PERRY, '2027-K7QMP-1', 94752));
const NAME = PERRY.plates[0]!.name;

describe('an offer', () => {
  it('holds until its day, counted by the calendar: 2027-01-02 and 30 days (worked by hand)', () => {
    expect(AGREED.offer).toMatchObject({ number: '2027-K7QMP-1', made: '2027-01-02', validUntil: '2027-02-01' });
  });
  it('is not altered by what comes later, and no longer holds', () => {
    const more = withQuantity(AGREED, 50);
    expect(more.offer).toBe(AGREED.offer);
    expect(offerHolds(AGREED.offer!, AGREED, fingerprintOf(AGREED))).toBe(true);
    expect(offerHolds(AGREED.offer!, more, fingerprintOf(more))).toBe(false);
    expect(quoteOfOffer(AGREED.offer!)?.totalMinor).toBe(94752);
  });
  it('is read back from a file as it was', () => {
    const read = readDesign(designText(AGREED));
    expect(read).toEqual({ design: AGREED });
  });
});

describe('an approval of an order', () => {
  it('binds how many, for how much, under which number', () => {
    expect(standing(AGREED)).toMatchObject({ kind: 'approved', order: { kind: 'approved' } });
    expect(approvalOf(AGREED, fingerprintOf(AGREED)).order).toMatch(
      /^Order as approved: 12 × .*offer 2027-K7QMP-1, EUR 947\.52$/,
    );
  });
  it('1: of fewer, for another price, is of what the customer saw and never of what the shop had offered', () => {
    const theirs = withQuantity(offered(PERRY, '2027-K7QMP-1', 94752), 6);
    const offer = offerOf(theirs, { fingerprint: fingerprintOf(theirs), made: '2027-01-04', quote: quote(56705) });
    const back = approve(theirs, {
      name: 'Ada Pell',
      at: AT,
      how: 'link',
      fingerprint: fingerprintOf(theirs),
      offer,
    });
    const own = { ...PERRY, offer: AGREED.offer!, approval: back.approval! };
    expect(said(own)).toBe(
      `Order not as approved: ${NAME}: 12 off (approved: 6), the price offered is EUR 947.52 (approved: EUR 567.05)`,
    );
    const taken = withOffer(own, offer);
    expect(said(taken)).toBe('');
    expect(taken.plates[0]?.quantity).toBe(6);
  });
  it('2: of 12 says of 50, and of 500 in an edited file, that they were not approved: text, papers and ZIP', () => {
    for (const [count, design] of [
      [50, withQuantity(AGREED, 50)],
      [500, edited(AGREED)],
    ] as const) {
      expect(standing(design).kind).toBe('approved');
      expect(isAllApproved(standing(design))).toBe(false);
      const wrong = `${NAME}: ${count} off (approved: 12)`;
      expect(approvalOf(design, fingerprintOf(design)).order).toBe(`ORDER NOT AS APPROVED: ${wrong}`);
      const asked = { design, plates: [], fingerprint: fingerprintOf(design), book: BUILT_IN };
      expect(writeOrderText(asked, (words) => words.english)).toContain(`Order not as approved: ${wrong}`);
      expect(approvalIsStale(design, BUILT_IN)).toBe(true);
    }
    expect(approvalIsStale(AGREED, BUILT_IN)).toBe(false);
  });
  it('6: of an older offer says both numbers and both totals once there is a new one', () => {
    const again = { ...offered(AGREED, '2027-K7QMP-2', 99999), approval: AGREED.approval! };
    expect(said(again)).toBe(
      'Order not as approved: the offer is offer 2027-K7QMP-2 (approved: offer 2027-K7QMP-1), ' +
        'the price offered is EUR 999.99 (approved: EUR 947.52)',
    );
  });
  it('says another title, a plate more, less, or of another size that cuts the same set of plates', () => {
    const [large, half] = AGREED.plates;
    const swapped = [
      { ...large!, diameter: half!.diameter },
      { ...half!, diameter: large!.diameter },
    ];
    const cases: [Partial<Design>, RegExp][] = [
      [{ title: 'For Ben' }, /the title is “For Ben” \(approved: “/],
      [{ plates: [...AGREED.plates, { ...large!, id: 'third' }] }, /was not part of what was approved/],
      [{ plates: AGREED.plates.slice(0, 1) }, /was approved and is missing/],
      [{ plates: [...swapped, ...AGREED.plates.slice(2)] }, /across \(approved: /],
    ];
    for (const [change, wrong] of cases) expect(said({ ...AGREED, ...change })).toMatch(wrong);
  });
  it('of a version before binds the drawing only, and that is said', () => {
    const { offer: _, ...older } = AGREED.approval!;
    const { offer: __, ...rest } = AGREED;
    const text = designText({ ...withQuantity(rest, 50), approval: older }).replace('"version": 4', '"version": 3');
    const read = readDesign(text);
    if ('problem' in read) throw new Error(read.problem);
    expect(standing(read.design)).toMatchObject({ kind: 'approved', order: { kind: 'unbound' } });
    expect(approvalOf(read.design, fingerprintOf(read.design)).order).toMatch(/^The approval is for the drawing only/);
    expect(approvalIsStale(read.design, BUILT_IN)).toBe(false);
  });
});

describe('numbers of offers', () => {
  it('are year, desk and count', () => expect(offerNumber('2027-01-04', 'K7QMP', 12)).toBe('2027-K7QMP-12'));
});

function edited(design: Design): Design {
  const text = JSON.parse(designText(design)) as Design;
  const read = readDesign(JSON.stringify(withQuantity(text, 500)));
  if ('problem' in read) throw new Error(read.problem);
  return read.design;
}
