import type { Design } from '../../design/schema.ts';
import { processWords, recordKey } from '../../stock/record-key.ts';
import { materialIn, processIn, type StockBook } from '../../stock/stock-book.ts';
import { named } from '../../sentences/say.ts';
import { PAPER_EN } from '../../sentences/paper-en.ts';
import type { Wording } from '../../sentences/wording.ts';

/** shop: all of it. customer: without what only those at the machine must know. */
export type Reader = 'shop' | 'customer';

/**
 * The usual cautions for one stock, in the order of the job. They name where the rules stand rather than giving advice:
 * local codes, data sheets and trained people decide.
 * Sources: 29 CFR 1910.107 (spraying), 1910.138 (hand protection), 1910.252 (hot work), 1910.1026 (chromium VI), NFPA 51B
 * (hot work), NIOSH Pocket Guide npgd0262 (ethanol, flash point 12.8 C).
 */
export function listCautions(stock: Design['stock'], book: StockBook, reader: Reader = 'shop'): Wording[] {
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const cautions: Wording[] = [];
  if (process && reader === 'shop') {
    const caution = named(recordKey('processes', process, 'caution'), process.caution);
    cautions.push(PAPER_EN.say('paperCaution.process', { process: processWords(process), caution }));
  }
  if (material?.family === 'plastic' && process?.kind === 'laser') cautions.push(PAPER_EN.say('paperCaution.plastic'));
  if (material?.holds?.includes('chromium') && stock.use === 'torch')
    cautions.push(PAPER_EN.say('paperCaution.chromium'));
  cautions.push(PAPER_EN.say('paperCaution.edges'));
  if (stock.use === 'torch') {
    cautions.push(
      PAPER_EN.say('paperCaution.spirit'),
      PAPER_EN.say('paperCaution.hotWork'),
      PAPER_EN.say('paperCaution.paintDry'),
      PAPER_EN.say('paperCaution.hot'),
    );
  } else {
    cautions.push(PAPER_EN.say('paperCaution.paint'), PAPER_EN.say('paperCaution.toPaint'));
  }
  cautions.push(PAPER_EN.say('paperCaution.defer'));
  return cautions;
}
