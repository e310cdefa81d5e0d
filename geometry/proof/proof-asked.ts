import type { Design } from '../design/schema.ts';
import type { PaperFormat } from '../files/paper/paper-format.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import type { Quote } from '../shop/quote.ts';
import type { ShopBook } from '../shop/shop-book.ts';
import type { StockBook } from '../stock/stock-book.ts';

/** One of the forms that a customer may choose from. */
export interface ProofOption {
  readonly name: string;
  readonly design: Design;
  readonly plates: readonly PlannedPlate[];
  readonly quote?: Quote;
}

export interface ProofAsked extends PaperFormat {
  readonly design: Design;
  /** Of the whole design, planned and proven (planPlates). */
  readonly plates: readonly PlannedPlate[];
  readonly book: StockBook;
  /** Whose proof it is. */
  readonly shop?: ShopBook;
  /** Absent: on request, and nothing is said of it. */
  readonly quote?: Quote;
  /** At most four are shown. */
  readonly options?: readonly ProofOption[];
  /** Also pages at true size, to be put together on the barrel. */
  readonly tiles: boolean;
  /** Plates whose pages at true size are wanted, by id; absent: all. */
  readonly tilesOf?: readonly string[];
  /** Colour of the mark on the picture, `#26211d`; absent: black paint, or char where it is burnt. */
  readonly paint?: string;
}
