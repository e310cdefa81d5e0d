import { estimateSeconds } from '../../cutplan/cost/estimate-time.ts';
import { estimateShare } from '../../cutplan/cost/price.ts';
import { gapsFor, settingsFor } from '../../cutplan/cost/settings-for.ts';
import type { Design } from '../../design/schema.ts';
import { processIn, type StockBook } from '../../stock/stock-book.ts';
import type { PlannedPlate } from './plate-drawing.ts';

/** What one plate takes of machine and rack, before any sheet is planned; a part is absent where the shop's list has nothing. */
export interface PlateEstimate {
  readonly seconds?: number;
  /** The square around the plate, with what stays beside it, as a share of the sheet; 0 to 1. */
  readonly sheet?: { readonly share: number; readonly widthMm: number; readonly heightMm: number };
}

export function estimatePlate({ plate, plan }: PlannedPlate, { stock }: Design, book: StockBook): PlateEstimate {
  const process = processIn(book, stock.process);
  if (!process) return {};
  const settings = settingsFor(book, stock);
  const share = estimateShare(book, stock, plate.diameterMm, gapsFor(process).betweenMm);
  const sheet = share && book.sheets.find((s) => s.id === share.kind);
  return {
    ...(!('problem' in settings) && { seconds: estimateSeconds(plan, settings) }),
    ...(share && sheet && { sheet: { share: share.share, widthMm: sheet.widthMm, heightMm: sheet.heightMm } }),
  };
}
