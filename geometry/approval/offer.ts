import { plateDiameterMm } from '../barrel/blank.ts';
import { markOf } from '../design/fingerprint.ts';
import { canonicalJson } from '../design/canonical-json.ts';
import { visible } from '../design/visible.ts';
import type { Design, Offer } from '../design/schema.ts';
import { inMm } from '../sentences/say.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import type { Wording } from '../sentences/wording.ts';
import type { Quote } from '../shop/quote.ts';
import type { ShopBook } from '../shop/shop-book.ts';
import { minorDigits } from '../stock/money.ts';
import { sameFingerprint } from './same-fingerprint.ts';

/** What an offer is made of; all but fingerprint and day may be left out. */
export interface Offering {
  /** Whole fingerprint of the design as it is. */
  readonly fingerprint: string;
  /** Day by ISO 8601. */
  readonly made: string;
  readonly number?: string;
  readonly quote?: Quote | undefined;
  /** SHA-256 of what the quote was computed by (pricesMark). */
  readonly shopPrices?: string | undefined;
}

/** SHA-256 of all that a shop's price is computed by; its own notes on where a price comes from are not counted. */
export function pricesMark({ prices, tax, currency, leadTime, offer }: ShopBook): string {
  const counted: unknown = JSON.parse(
    JSON.stringify({ prices, tax, currency, leadTime, offer }, (key, value: unknown) =>
      key === 'source' ? undefined : value,
    ),
  );
  return markOf(counted as object);
}

/** What both sides would agree on by the design as it is: plates by size and number, title, and the price given. */
export function offerOf(design: Design, { fingerprint, made, number = '', quote, shopPrices }: Offering): Offer {
  const { validDays } = quote ?? {};
  return {
    number,
    made,
    ...(validDays !== undefined && number !== '' && { validUntil: dayAfter(made, validDays) }),
    fingerprint,
    title: design.title,
    plates: platesOf(design),
    ...(quote && { price: priceOf(quote, shopPrices) }),
  };
}

/** The price of an offer as every place shows a price; undefined where it is on request. */
export function quoteOfOffer({ price }: Offer): Quote | undefined {
  if (!price) return undefined;
  const { shopPrices: _, lines, tax, lead, ...rest } = price;
  return {
    ...rest,
    lines: lines.map(({ plate, ...line }) => ({ ...line, ...(plate !== undefined && { plate }) })),
    steps: [],
    ...(tax && { tax }),
    ...(lead && { lead }),
  };
}

/** True while the offer says what the design is: nothing is cut, counted, sized or called differently. */
export function offerHolds(offer: Offer, design: Design, fingerprint: string): boolean {
  return sameFingerprint(offer.fingerprint, fingerprint) && changesSince(offer, design).length === 0;
}

/** In what the design is not what the offer says, beside what is cut; in words. */
export function changesSince({ title, plates }: Offer, design: Design): readonly Wording[] {
  const now = platesOf(design);
  const { say } = APPROVAL_EN;
  return [
    ...(title === design.title ? [] : [say('agreed.title', { before: visible(title), after: visible(design.title) })]),
    ...plates.flatMap((was) => {
      const is = now.find(({ id }) => id === was.id);
      if (!is) return [say('agreed.plateRemoved', { plate: visible(was.name), quantity: was.quantity })];
      return [
        ...(is.name === was.name
          ? []
          : [say('agreed.plateName', { before: visible(was.name), after: visible(is.name) })]),
        ...(is.diameterMm === was.diameterMm
          ? []
          : [
              say('agreed.plateSize', {
                plate: visible(is.name),
                before: inMm(was.diameterMm),
                after: inMm(is.diameterMm),
              }),
            ]),
        ...(is.quantity === was.quantity
          ? []
          : [say('agreed.quantity', { plate: visible(is.name), before: was.quantity, after: is.quantity })]),
      ];
    }),
    ...now.flatMap(({ id, name, quantity }) =>
      plates.some((was) => was.id === id) ? [] : [say('agreed.plateAdded', { plate: visible(name), quantity })],
    ),
  ];
}

/** How an offer made later differs from the one that was approved: its number, or its price. */
export function offerChanges(approved: Offer, now: Offer | undefined): readonly Wording[] {
  if (!now || canonicalJson(approved) === canonicalJson(now)) return [];
  const { say } = APPROVAL_EN;
  const [before, after] = [approved, now].map(totalWords) as [Wording, Wording];
  return [
    ...(approved.number === '' || approved.number === now.number
      ? []
      : [say('agreed.otherOffer', { before: numberWords(approved), after: numberWords(now) })]),
    ...(before.english === after.english ? [] : [say('agreed.total', { before, after })]),
  ];
}

/** The design with title and quantities as the offer says, where its plates are still there, and under that offer. */
export function withOffer(design: Design, offer: Offer): Design {
  const plates = design.plates.map((spec) => {
    const agreed = offer.plates.find(({ id }) => id === spec.id);
    return agreed ? { ...spec, name: agreed.name, quantity: agreed.quantity } : spec;
  });
  const { offer: _, ...rest } = design;
  return { ...rest, title: offer.title, plates, ...(offer.number !== '' && { offer }) };
}

/** Number of an offer in words; one without a number is what was agreed by approving. */
export function numberWords({ number }: Offer): Wording {
  return number === ''
    ? APPROVAL_EN.say('agreed.offerBare')
    : APPROVAL_EN.say('agreed.offerNumber', { number: visible(number) });
}

/** The total in words, `EUR 947.52`. */
export function totalWords({ price }: Offer): Wording {
  if (!price) return APPROVAL_EN.say('agreed.onRequest');
  const { currency, totalMinor } = price;
  const digits = minorDigits(currency);
  const all = String(Math.abs(totalMinor)).padStart(digits + 1, '0');
  const whole = `${totalMinor < 0 ? '-' : ''}${all.slice(0, all.length - digits)}`;
  if (digits === 0) return APPROVAL_EN.say('agreed.coinsNone', { currency, whole });
  return APPROVAL_EN.say('agreed.coins', { currency, whole, coins: all.slice(-digits) });
}

/** A number that two desks never give alike: year, the desk's own mark, and its counter (`2027-K7QMP-12`). */
export function offerNumber(day: string, desk: string, count: number): string {
  return `${day.slice(0, 4)}-${desk}-${count}`;
}

function platesOf(design: Design): Offer['plates'] {
  return design.plates.map((spec) => {
    const { diameterMm } = plateDiameterMm(design, spec);
    return { id: spec.id, name: spec.name, diameterMm: Math.round(diameterMm * 1000) / 1000, quantity: spec.quantity };
  });
}

function priceOf({ steps: _, validDays: __, lines, ...rest }: Quote, shopPrices?: string): NonNullable<Offer['price']> {
  return { ...rest, lines: [...lines], ...(shopPrices !== undefined && { shopPrices }) };
}

/** So many days later, by the calendar alone; what is no day stays as it is. */
function dayAfter(day: string, days: number): string {
  const ms = Date.parse(`${day.slice(0, 10)}T00:00:00Z`);
  return Number.isNaN(ms) ? day : new Date(ms + days * 86_400_000).toISOString().slice(0, 10);
}
