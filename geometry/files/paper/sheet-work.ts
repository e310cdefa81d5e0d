import { guessedS } from '../../cutplan/cost/guess-time.ts';
import { guessedShare } from '../../cutplan/cost/price.ts';
import { gapsFor, settingsFor } from '../../cutplan/cost/settings-for.ts';
import type { Design } from '../../design/schema.ts';
import { processIn, type StockBook } from '../../stock/stock-book.ts';
import type { PlannedPlate } from './sheet-drawing.ts';

/** What one plate takes of machine and rack, before any sheet is planned; a part is absent where the shop's list has nothing. */
export interface PlateWork {
  readonly seconds?: number;
  /** The square around the plate, with what stays beside it, as a share of the sheet; 0 to 1. */
  readonly sheet?: { readonly share: number; readonly widthMm: number; readonly heightMm: number };
}

export function workOf({ plate, plan }: PlannedPlate, { stock }: Design, book: StockBook): PlateWork {
  const process = processIn(book, stock.process);
  if (!process) return {};
  const settings = settingsFor(book, stock);
  const share = guessedShare(book, stock, plate.diameterMm, gapsFor(process).betweenMm);
  const sheet = share && book.sheets.find((s) => s.id === share.kind);
  return {
    ...(!('problem' in settings) && { seconds: guessedS(plan, settings) }),
    ...(share && sheet && { sheet: { share: share.share, widthMm: sheet.widthMm, heightMm: sheet.heightMm } }),
  };
}
