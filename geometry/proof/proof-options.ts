import { formatMoney } from '../shop/format-money.ts';
import { materialWords } from '../stock/record-key.ts';
import { materialIn } from '../stock/stock-book.ts';
import { oneLine } from '../files/plain-text.ts';
import { INK } from '../files/paper/pdf-page.ts';
import { composeBarrelPicture, findMarkingPlate } from './barrel-picture.ts';
import { drawPicture } from './draw-picture.ts';
import { type Flow, TYPE } from './flow.ts';
import type { ProofAsked, ProofOption } from './proof-asked.ts';

/** As many as can be told apart on one page. */
const MOST = 4;
const GAP_MM = 8;
const WORDS_MM = 26;

/** All options on one page, two beside each other, with what tells them apart. */
export function drawOptions(flow: Flow, asked: ProofAsked): void {
  const options = (asked.options ?? []).slice(0, MOST);
  if (options.length === 0) return;
  const { words, width, left } = flow;
  flow.newPage();
  flow.heading(words.say('paperProof.options'), 40);
  flow.paragraph(words.say('paperProof.optionsHow'));
  flow.y += 6;
  const columns = options.length === 1 ? 1 : 2;
  const rows = Math.ceil(options.length / columns);
  const cell = (width - GAP_MM * (columns - 1)) / columns;
  const high = Math.min(cell + WORDS_MM, (flow.bottom - flow.y - GAP_MM * (rows - 1)) / rows);
  options.forEach((option, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    drawOption(flow, asked, option, {
      x: left + column * (cell + GAP_MM),
      y: flow.y + row * (high + GAP_MM),
      width: cell,
      height: high,
      number: i + 1,
    });
  });
}

interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly number: number;
}

function drawOption({ page, words }: Flow, { book, paint }: ProofAsked, option: ProofOption, at: Cell): void {
  const { design, plates, quote } = option;
  const side = Math.min(at.width, at.height - WORDS_MM);
  const name = oneLine(option.name, 60) || String(at.number);
  const shown = findMarkingPlate(design, plates);
  page.tags.within('Sect', () => {
    if (shown) {
      const alt = words.say('paperProof.pictureAlt', { title: name });
      page.tags.picture(alt, () => {
        drawPicture(page, composeBarrelPicture(design, shown, paint), at.x + at.width / 2, at.y + side / 2, side);
      });
    }
    const y = at.y + side + 8;
    const money = quote ? formatMoney(quote.totalMinor, quote.currency, words.language) : '';
    page.line(name, at.x, y, at.width * 0.66, { size: 11, bold: true });
    page.line(money, at.x + at.width * 0.66, y, at.width * 0.34, { size: 11, bold: true, align: 'right' });
    const material = materialIn(book, design.stock.material);
    const stock = material ? words.speak(materialWords(material)) : design.stock.material;
    const facts = [
      `${stock}, ${words.mm(design.stock.thicknessMm, 2)}`,
      plates.map(({ plate }) => `${plate.name} ${words.mm(plate.diameterMm)}`).join(', '),
    ];
    facts.forEach((fact, i) => page.line(fact, at.x, y + 5 + i * 4.4, at.width, TYPE.quiet));
    page.rule(at.x, y + 12.5, at.x + at.width, y + 12.5, 0.15, INK.hair);
  });
}
