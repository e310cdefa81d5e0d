import { showFingerprint } from '../design/show-fingerprint.ts';
import { approvalWords } from '../files/approval.ts';
import { listCautions } from '../files/paper/cautions.ts';
import { INK, type PdfPage } from '../files/paper/pdf-page.ts';
import { findRolling } from '../files/paper/rolled-plate.ts';
import { formatMoney } from '../shop/format-money.ts';
import type { Quote, QuoteLine } from '../shop/quote.ts';
import { leadText } from './proof-cover.ts';
import { type Flow, TYPE } from './flow.ts';
import type { ProofAsked } from './proof-asked.ts';

const LINE_MM = 6;

/** Price line by line, with tax and total, lead time, and how long it holds. */
export function drawPrice(flow: Flow, quote: Quote): void {
  const { page, words, left, width } = flow;
  const money = (minor: number) => formatMoney(minor, quote.currency, words.language);
  const row = (label: string, count: string, amount: string, bold = false) => {
    flow.need(LINE_MM);
    page.tags.within('TR', () => {
      page.line(label, left, flow.y + 4, width * 0.6, { size: 9.5, bold, tag: 'TH' });
      page.line(count, left + width * 0.6, flow.y + 4, width * 0.16, { ...TYPE.quiet, align: 'right', tag: 'TD' });
      page.line(amount, left + width * 0.76, flow.y + 4, width * 0.24, { size: 9.5, bold, align: 'right', tag: 'TD' });
    });
    flow.y += LINE_MM;
  };
  const rule = (thick?: number) => page.rule(left, flow.y, left + width, flow.y, thick, thick ? INK.char : undefined);
  const { tax } = quote;
  flow.heading(words.say('paperProof.priceLines'), Math.min(60, (quote.lines.length + 3) * LINE_MM));
  page.tags.within('Table', () => {
    for (const line of quote.lines) {
      rule();
      row(words.say(`paperPrice.${line.code}`, { plate: line.plate ?? '' }), countText(flow, line), money(line.minor));
    }
    rule(0.3);
    if (tax && !tax.included) {
      row(words.say('paperProof.priceNet'), '', money(quote.netMinor));
      row(words.say('paperProof.priceTax', taxValues(flow, tax)), '', money(tax.minor));
    }
    row(words.say('paperProof.priceTotal'), '', money(quote.totalMinor), true);
    if (tax?.included) row(words.say('paperProof.priceTaxWithin', taxValues(flow, tax)), '', money(tax.minor));
  });
  flow.y += 2;
  const terms = [
    ...(quote.lead ? [`${words.say('paperProof.leadTime')}: ${leadText(words, quote.lead)}.`] : []),
    ...(quote.validDays === undefined ? [] : [words.say('paperProof.validDays', { days: quote.validDays })]),
  ];
  if (terms.length > 0) flow.paragraph(terms.join(' '), TYPE.quiet);
  flow.y += 6;
}

function taxValues({ words }: Flow, { name, percent }: { readonly name: string; readonly percent: number }) {
  return { name, percent: words.number(percent, 2).replace(/[.,]?0+$/, '') };
}

function countText({ words }: Flow, { unit, count }: QuoteLine): string {
  if (unit === 'metres') return `${words.number(count, 2)} m`;
  return unit === 'per-cent' ? `${words.plain(count)} %` : String(count);
}

/** How the plate is used and kept, and where work with it can hurt. */
export function drawCare(flow: Flow, { design, plates, book }: ProofAsked): void {
  const { words } = flow;
  const rolled = plates.some(({ plate }) => findRolling(design, plate.diameterMm) !== undefined);
  const care = [
    words.say(design.stock.use === 'torch' ? 'paperProof.careTorch' : 'paperProof.carePaint'),
    words.say(rolled ? 'paperProof.careRolled' : 'paperProof.careFlat'),
  ];
  flow.heading(words.say('paperProof.care'), 12);
  flow.paragraph(care.join(' '));
  flow.y += 6;
  const cautions = listCautions(design.stock, book, 'customer').map((c) => words.speak(c));
  flow.heading(words.say('paper.takeCare'), 20);
  flow.page.tags.within('L', () => cautions.forEach((text) => drawItem(flow, text)));
  flow.y += 4;
}

function drawItem(flow: Flow, text: string): void {
  const { page, left, width } = flow;
  const style = { size: 9 };
  const rows = page.rows(text, width - 5, style);
  flow.need(rows * 4.3);
  page.tags.within('LI', () => {
    page.tags.ornament(() => page.line('–', left, flow.y + 2.6, 4, style));
    page.block(text, left + 5, flow.y + 2.6, width - 5, rows, 4.3, style);
  });
  flow.y += rows * 4.3 + 1.2;
}

const APPROVAL_MM = 58;
/** The same without the lines to sign on, where it was approved already. */
const APPROVED_MM = 30;
/** What it takes to say that something else was approved. */
const CHANGED_MM = 12;

/** What is signed, and the lines to sign on; or by whom it was approved already. */
export function drawApproval(flow: Flow, asked: ProofAsked, fingerprint: string): void {
  const { page, words, left, width } = flow;
  const legal = asked.shop?.legal ?? [];
  const legalMm = legal.length > 0 ? 5 + legal.reduce((sum, l) => sum + page.rows(l, width, TYPE.label) * 3.4, 0) : 0;
  const { kind, words: standing, order } = approvalWords(asked.design, fingerprint, 'written');
  const agreed = kind === 'approved' && order?.loud !== true;
  const free =
    flow.bottom -
    flow.y -
    (agreed ? APPROVED_MM : APPROVAL_MM) -
    (kind === 'changed' || order?.loud === true ? CHANGED_MM : 0) -
    legalMm;
  // At the foot of the page it belongs to; on a page of its own at the top.
  if (free >= 0) flow.y += free;
  else flow.newPage();
  page.rule(left, flow.y, left + width, flow.y, 0.35, INK.char);
  flow.y += 5;
  flow.heading(words.say('paperProof.approval'), 40);
  if (agreed) {
    flow.paragraph(
      `${words.speak(standing)}. ${words.say('paper.fingerprint', { fingerprint: showFingerprint(fingerprint) })}.`,
      {
        size: 11,
        bold: true,
      },
    );
    if (order) flow.paragraph(`${words.speak(order.words)}.`);
    flow.y += 6;
  } else {
    if (order?.loud === true) flow.paragraph(`${words.speak(order.words)}.`, { size: 11, bold: true });
    if (kind === 'changed') flow.paragraph(`${words.speak(standing)}.`, { size: 11, bold: true });
    flow.paragraph(
      `${words.say('paperProof.approvalHow')} ${words.say('paperProof.approvalOf', { fingerprint: showFingerprint(fingerprint) })}`,
    );
    drawSignature(page, flow);
  }
  drawLegal(flow, legal);
}

function drawSignature(page: PdfPage, flow: Flow): void {
  const { words, left, width } = flow;
  const y = Math.min(flow.y + 22, flow.bottom - 5);
  const [gap, parts] = [6, [0.36, 0.22, 0.42]];
  let x = left;
  (['paperProof.name', 'paperProof.date', 'paperProof.signature'] as const).forEach((key, i) => {
    const wide = width * parts[i]! - (i < 2 ? gap : 0);
    page.rule(x, y, x + wide, y, 0.25, INK.char);
    page.line(words.say(key), x, y + 4, wide, TYPE.label);
    x += wide + gap;
  });
  flow.y = y + 8;
}

function drawLegal(flow: Flow, legal: readonly string[]): void {
  for (const line of legal) {
    const rows = flow.page.rows(line, flow.width, TYPE.label);
    flow.need(rows * 3.4);
    flow.page.block(line, flow.left, flow.y + 2, flow.width, rows, 3.4, TYPE.label);
    flow.y += rows * 3.4;
  }
}
