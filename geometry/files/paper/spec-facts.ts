import type { Design } from '../../design/schema.ts';
import { materialWords, processWords } from '../../stock/record-key.ts';
import { materialIn, processIn, type StockBook } from '../../stock/stock-book.ts';
import { asHeading, type PaperWords } from './paper-words.ts';
import { oneLine } from '../plain-text.ts';
import type { PlannedPlate } from './plate-drawing.ts';
import { HEAD, type ListArea } from './spec-lists.ts';
import { INK } from './pdf-page.ts';
import { describeRolling, findRolling } from './rolled-plate.ts';
import { TABLE_HEIGHT_MM } from './spec-table.ts';
import { estimatePlate } from './estimate-plate.ts';

type Fact = readonly [label: string, value: string];
export interface Facts {
  readonly stock: readonly Fact[];
  readonly order: readonly Fact[];
  /** Nothing for plates that stay flat. */
  readonly rolled: readonly Fact[];
}

/** All plates of a design are cut from one stock and rolled to the one radius of its barrel. */
export function gatherFacts(
  design: Design,
  plates: readonly PlannedPlate[],
  book: StockBook,
  words: PaperWords,
): Facts {
  const { stock, order } = design;
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const rolled = plates.map(({ plate }) => findRolling(design, plate.diameterMm)).find((r) => r !== undefined);
  const sheets = plates.flatMap((planned) => estimatePlate(planned, design, book).sheet ?? []);
  // The largest of those that the plates are cut from.
  const sheet = sheets.sort((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm)[0];
  const typed = (text: string) => oneLine(text, 4000) || '–';
  return {
    stock: [
      [words.say('paper.material'), material ? words.speak(materialWords(material)) : stock.material],
      [words.say('paper.thickness'), `${words.mm(stock.thicknessMm, 2)} (${words.inches(stock.thicknessMm)})`],
      [words.say('paper.process'), process ? words.speak(processWords(process)) : stock.process],
      [words.say('paper.use'), words.say(stock.use === 'torch' ? 'paper.torch' : 'paper.paint')],
      ...(sheet
        ? [
            [
              words.say('paperSheet.sheetIs'),
              words.say('paperSheet.sheetSize', {
                width: words.plain(sheet.widthMm),
                height: words.plain(sheet.heightMm),
              }),
            ] as const,
          ]
        : []),
    ],
    order: [
      [words.say('paperSheet.for'), typed(order.who)],
      [words.say('paperSheet.reference'), typed(order.reference)],
      [words.say('paperSheet.neededBy'), typed(order.neededBy)],
      [words.say('paper.notes'), typed(order.notes)],
    ],
    rolled: rolled ? describeRolling(rolled, words) : [],
  };
}

const LABEL_MM = 17;

export function drawFactsBeside({ page, words }: ListArea, facts: Facts, x: number, top: number, width: number): void {
  let y = top;
  for (const [heading, rows] of [
    [words.say('paper.stock'), [...facts.stock, ...facts.rolled]],
    [words.say('paper.order'), facts.order],
  ] as const) {
    page.line(asHeading(heading), x, y, width, HEAD);
    y += 4.9;
    rows.forEach(([label, value], i) => {
      page.line(label, x, y, LABEL_MM - 1, { size: 8, colour: INK.quiet });
      const isNotes = rows === facts.order && i === rows.length - 1;
      const most = isNotes ? Math.max(1, Math.floor((top + TABLE_HEIGHT_MM - y) / 3.8)) : 2;
      y += page.block(value, x + LABEL_MM, y, width - LABEL_MM, most, 3.8, { size: 8.5 }) * 3.8 + 0.9;
    });
    y += 3;
  }
}

/** With many plates the table takes the whole width: stock and order stand above it, a row each. */
export function drawFactsAcross({ page, left, width }: ListArea, facts: Facts, top: number): void {
  [facts.stock, facts.order, facts.rolled].forEach((row, k) => {
    const column = width / row.length;
    row.forEach(([label, value], i) => {
      page.line(label, left + i * column, top + k * 9, column - 3, { size: 7, colour: INK.quiet });
      page.line(value, left + i * column, top + k * 9 + 3.8, column - 3, { size: 8.5 });
    });
  });
}
