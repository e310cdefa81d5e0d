import { findSameRevision } from '../approval/revisions.ts';
import { showFingerprint } from '../design/show-fingerprint.ts';
import { approvalWords } from '../files/approval.ts';
import { asHeading } from '../files/paper/paper-words.ts';
import { oneLine } from '../files/plain-text.ts';
import { INK } from '../files/paper/pdf-page.ts';
import { findRolling } from '../files/paper/rolled-plate.ts';
import type { Offer } from '../design/schema.ts';
import type { Quote } from '../shop/quote.ts';
import { formatMoney } from '../shop/format-money.ts';
import { materialWords } from '../stock/record-key.ts';
import { materialIn } from '../stock/stock-book.ts';
import { headDiameter } from '../barrel/blank.ts';
import { composeBarrelPicture, findMarkingPlate } from './barrel-picture.ts';
import { drawPicture } from './draw-picture.ts';
import { type Flow, TYPE } from './flow.ts';
import type { ProofAsked } from './proof-asked.ts';
import { drawShopHead, SHOP_HEAD_MM } from './shop-head.ts';

const FACT_MM = 14;
const COLUMNS = 4;
/** Titles are set as large as they fit in. */
const TITLE_SIZES = [30, 26, 22, 18];

/** What the cover needs besides: whether drawing and order are as approved, and the offer that counts. */
export interface CoverAsked extends ProofAsked {
  readonly approved: boolean;
  readonly offer: Offer | undefined;
}

/** The first page: whose proof of what, how it stands to the approval, the picture, and the facts in short. */
export function drawCover(flow: Flow, asked: CoverAsked, title: string, fingerprint: string): void {
  const { page, words, left, width } = flow;
  let y = 24;
  if (asked.shop) {
    drawShopHead(page, asked.shop, left, width);
    y = SHOP_HEAD_MM + 13;
  }
  page.line(
    asHeading(words.say(asked.approved ? 'paperProof.approved' : 'paperProof.forApproval')),
    left,
    y,
    width,
    TYPE.eyebrow,
  );
  const size = TITLE_SIZES.find((s) => page.widthOf(title, { size: s, bold: true }) <= width) ?? 18;
  const rows = page.block(title, left, y + 5 + size * 0.28, width, 2, size * 0.42, { size, bold: true, tag: 'H1' });
  y += 5 + size * 0.28 + (rows - 1) * size * 0.42 + 7;
  y = drawStanding(flow, asked, fingerprint, y);
  const facts = factsOf(flow, asked);
  const factsTop = flow.bottom - facts.length * FACT_MM;
  drawPictureIn(flow, asked, title, y, factsTop - 4);
  facts.forEach((row, i) => drawFacts(flow, row, factsTop + i * FACT_MM));
  flow.y = flow.bottom;
}

/** Fingerprint, revision and approval under the title; loud where something else was approved. Returns where it ends. */
function drawStanding(flow: Flow, { design }: ProofAsked, fingerprint: string, y: number): number {
  const { page, words, left, width } = flow;
  const kept = findSameRevision(design)?.letter;
  const last = design.revisions?.at(-1)?.letter;
  const revision =
    kept !== undefined
      ? [words.say('paper.revision', { letter: kept })]
      : last !== undefined
        ? [words.say('paper.revisionAfter', { letter: last })]
        : [];
  const text = [words.say('paper.fingerprint', { fingerprint: showFingerprint(fingerprint) }), ...revision].join(
    '  ·  ',
  );
  const { kind, words: drawing, loud: drawingLoud, order } = approvalWords(design, fingerprint, 'written');
  const standing = order?.loud === true && !drawingLoud ? order.words : drawing;
  const loud = drawingLoud || order?.loud === true;
  page.line(text, left, y, width * 0.6, TYPE.quiet);
  if (!loud) {
    const style = { ...TYPE.quiet, bold: kind === 'approved', align: 'right' } as const;
    page.line(words.speak(standing), left + width * 0.4, y, width * 0.6, style);
    return y + 5;
  }
  const said = words.speak(standing);
  const style = { size: 9.5, bold: true, colour: INK.paper, align: 'centre' } as const;
  const rows = Math.min(3, page.rows(said, width - 10, style));
  page.tags.ornament(() =>
    page.doc
      .rect(left, y + 4, width, 5 + rows * 4.8)
      .fillColor(INK.char)
      .fill(),
  );
  page.block(said, left + 5, y + 10.2, width - 10, rows, 4.8, style);
  return y + 11 + rows * 4.8;
}

function drawPictureIn(flow: Flow, asked: ProofAsked, title: string, top: number, bottom: number): void {
  const { page, words, left, width } = flow;
  const { design, plates, paint } = asked;
  const shown = findMarkingPlate(design, plates);
  if (!shown) return;
  const picture = composeBarrelPicture(design, shown, paint);
  const side = Math.min(width * 0.88, bottom - top - 14);
  const cy = top + (bottom - 8 - top) / 2;
  page.tags.picture(words.say('paperProof.pictureAlt', { title }), () => {
    drawPicture(page, picture, left + width / 2, cy, side);
  });
  const onHead = design.surface === 'head';
  const caption = onHead
    ? words.say('paperProof.headDrawn', { diameter: words.mm(headDiameter(design.head).smallerMm, 0) })
    : words.say('paperProof.rolledDrawn');
  page.line(caption, left, cy + side / 2 + 6.5, width, { ...TYPE.quiet, align: 'centre' });
}

type Fact = readonly [label: string, value: string, below?: string];

/** In rows of at most COLUMNS: every plate by size, number and price, what it is of, what it costs, and the offer. */
function factsOf({ words }: Flow, { design, plates, book, quote, offer }: CoverAsked): Fact[][] {
  const { stock, order } = design;
  const material = materialIn(book, stock.material);
  const [first] = plates;
  const rolled = first && findRolling(design, first.plate.diameterMm);
  const money = (minor: number) => quote && formatMoney(minor, quote.currency, words.language);
  const made = plates.map(({ plate: { name, quantity, diameterMm } }): Fact => {
    const line = quote?.lines.find(({ code, plate }) => code === 'plate' && plate === name);
    const each = line && line.count > 0 ? money(Math.round(line.minor / line.count)) : undefined;
    const below = [
      words.inches(diameterMm),
      ...(each === undefined ? [] : [words.say('paperProof.each', { price: each })]),
    ];
    const diameter = words.mm(diameterMm);
    return [oneLine(name, 60), words.say('paperProof.plateFact', { quantity, diameter }), below.join(' · ')];
  });
  const main: Fact[] = [
    [
      words.say('paper.material'),
      material ? words.speak(materialWords(material)) : stock.material,
      words.mm(stock.thicknessMm, 2),
    ],
    [
      words.say('paper.use'),
      words.say(stock.use === 'torch' ? 'paper.torch' : 'paper.paint'),
      rolled ? words.say('paperProof.rolledTo', { radius: words.mm(rolled.radiusMm, 0) }) : '',
    ],
  ];
  const lead = quote?.lead && leadText(words, quote.lead);
  const price: Fact[] = [
    ...(quote
      ? [
          [
            words.say('paperProof.price'),
            formatMoney(quote.totalMinor, quote.currency, words.language),
            taxText(words, quote),
          ] as const,
        ]
      : []),
  ];
  const given: Fact[] = [
    ...(lead === undefined ? [] : [[words.say('paperProof.leadTime'), lead] as const]),
    ...fact(words.say('paperSheet.for'), order.who, order.reference),
    ...fact(words.say('paperProof.neededBy'), words.day(order.neededBy)),
  ];
  const offered: Fact[] =
    offer === undefined || offer.number === ''
      ? []
      : [
          [words.say('paperProof.offerNumber'), oneLine(offer.number, 40)],
          [words.say('paperProof.offerMade'), words.day(oneLine(offer.made, 40))],
          ...fact(words.say('paperProof.offerUntil'), words.day(offer.validUntil ?? '')),
        ];
  return [...inRows([...made, ...main]), ...inRows([...price, ...offered, ...given])];
}

function inRows(facts: readonly Fact[]): Fact[][] {
  return Array.from({ length: Math.ceil(facts.length / COLUMNS) }, (_, i) =>
    facts.slice(i * COLUMNS, (i + 1) * COLUMNS),
  );
}

/** What of the total is tax, by name. */
function taxText(words: Flow['words'], { tax }: Quote): string {
  if (!tax) return '';
  const values = { name: tax.name, percent: words.plain(tax.percent) };
  return words.say(tax.included ? 'paperProof.priceTaxWithin' : 'paperProof.priceTaxOn', values);
}

export function leadText(words: Flow['words'], { least, most }: { readonly least: number; readonly most: number }) {
  return words.say(least === most ? 'paperProof.leadDay' : 'paperProof.leadDays', { least, most });
}

function fact(label: string, typed: string, below = ''): Fact[] {
  const [value, under] = [oneLine(typed, 200), oneLine(below, 200)];
  return value + under === '' ? [] : [[label, value || '–', under]];
}

function drawFacts({ page, left, width }: Flow, facts: readonly Fact[], y: number): void {
  page.rule(left, y, left + width, y);
  const column = width / COLUMNS;
  facts.forEach(([label, value, below], i) => {
    const x = left + i * column;
    page.line(label, x, y + 4, column - 3, TYPE.label);
    page.line(value, x, y + 8, column - 3, { size: 10, bold: true });
    if (below) page.line(below, x, y + 11.8, column - 3, TYPE.label);
  });
}
