import { showFingerprint } from '../design/show-fingerprint.ts';
import { orderWords, standingOf } from '../approval/standing.ts';
import { isText } from '../design/kinds.ts';
import type { Design } from '../design/schema.ts';
import { oneLine } from '../files/plain-text.ts';
import { materialIn, processIn, type StockBook } from '../stock/stock-book.ts';
import { dayWords } from '../sentences/day-words.ts';
import { inMm, named } from '../sentences/say.ts';
import { ORDER_EN } from '../sentences/order-en.ts';
import type { Wording } from '../sentences/wording.ts';

export interface OrderTextAsked {
  readonly design: Design;
  /** The plates as they were made: a plate that fits its head has its diameter from there. */
  readonly plates: readonly { readonly plateId: string; readonly diameterMm: number }[];
  /** fingerprintOf(design, ownRules). */
  readonly fingerprint: string;
  readonly book: StockBook;
  /** As it is to be read, `EUR 240.00`; absent: not said. */
  readonly price?: string | undefined;
}

/**
 * An order as plain text for a mail: title, plates, material, what they say, price, fingerprint and approval, line by
 * line, each said by `speak`. Lines end in \n; nothing typed can begin a line of its own.
 */
export function writeOrderText(asked: OrderTextAsked, speak: (words: Wording) => string): string {
  const { design, plates, fingerprint, book, price } = asked;
  const { order, stock } = design;
  const [material, process] = [materialIn(book, stock.material), processIn(book, stock.process)];
  const lines: (Wording | string | undefined)[] = [
    ORDER_EN.say('orderText.title', { title: oneLine(design.title, 120) }),
    said('orderText.who', 'who', order.who),
    said('orderText.reference', 'reference', order.reference),
    saidDay(order.neededBy),
    '',
    ORDER_EN.say('orderText.plates'),
    ...design.plates.flatMap(({ id, name, quantity }) => {
      const made = plates.find(({ plateId }) => plateId === id);
      if (!made) return [];
      return [ORDER_EN.say('orderText.plate', { quantity, name: oneLine(name, 60), diameter: inMm(made.diameterMm) })];
    }),
    ORDER_EN.say('orderText.material', {
      material: named(`materials.${stock.material}.name`, material?.name ?? stock.material),
      thickness: inMm(stock.thicknessMm, 2),
      process: named(`processes.${stock.process}.name`, process?.name ?? stock.process),
    }),
    '',
    ORDER_EN.say('orderText.letters'),
    ...design.elements.flatMap((e) => (isText(e) ? [`“${oneLine(e.text, 200)}”`] : [])),
    '',
    price === undefined ? undefined : ORDER_EN.say('orderText.price', { price }),
    ORDER_EN.say('orderText.fingerprint', { fingerprint: showFingerprint(fingerprint) }),
    ...approvalLines(design, fingerprint),
    said('orderText.notes', 'notes', order.notes),
  ];
  const text = lines.flatMap((line) => (line === undefined ? [] : [typeof line === 'string' ? line : speak(line)]));
  return `${text.join('\n')}\n`;
}

function said(
  key: 'orderText.who' | 'orderText.reference' | 'orderText.neededBy' | 'orderText.notes',
  name: string,
  typed: string,
): Wording | undefined {
  const line = oneLine(typed, 400);
  return line === '' ? undefined : ORDER_EN.say(key, { [name]: line });
}

function saidDay(typed: string): Wording | undefined {
  const line = oneLine(typed, 40);
  return line === '' ? undefined : ORDER_EN.say('orderText.neededBy', { day: dayWords(line) });
}

/** How the drawing stands, and how the order; loud where what was approved is something else. */
function approvalLines(design: Design, fingerprint: string): Wording[] {
  const standing = standingOf(design, fingerprint);
  if (standing.kind === 'open') return [ORDER_EN.say('orderText.notApproved')];
  const { approval } = standing;
  const order = orderWords(standing.order).words;
  const [name, at] = [oneLine(approval.name, 60), dayWords(oneLine(approval.at, 40))];
  if (standing.kind !== 'approved') {
    const key = standing.kind === 'short' ? 'orderText.approvedShort' : 'orderText.approvedOther';
    return [ORDER_EN.say(key, { name, approved: showFingerprint(oneLine(approval.fingerprint, 64)) }), order];
  }
  const drawing =
    at === '' ? ORDER_EN.say('orderText.approvedPlain', { name }) : ORDER_EN.say('orderText.approved', { name, at });
  return [drawing, order];
}
