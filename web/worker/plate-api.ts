import type { Signed } from '../../geometry/order-file/signature.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Finding } from '../../geometry/findings.ts';
import type { OrderRole, SoundOrder, UnsoundOrder } from '../../geometry/order-file/order-file.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { PaperName } from '../../geometry/files/paper/page-size.ts';
import type { Quote } from '../../geometry/shop/quote.ts';
import type { ShopBook } from '../../geometry/shop/shop-book.ts';
import type { Tongue } from '../../geometry/sentences/written-number.ts';
import type { BarrelPicture } from '../../geometry/proof/barrel-picture.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Day } from '../../geometry/sentences/calendar.ts';
import type { Key } from '../words/keys.ts';
import type { PackedPlate } from './pack-plate.ts';

export type Made = { readonly plate: PlateResult } | { readonly problem: Key };

/** The same as it crosses between worker and page. */
export type MadePacked = { readonly packed: PackedPlate } | { readonly problem: Key };

/** A plate with its pictures and what its cut plan says for a price. */
export interface PlannedPlate {
  readonly plate: PlateResult;
  /** All contours, rim included. */
  readonly cuttingMm: number;
  readonly openings: number;
  /** The end of the barrel with the mark it leaves. */
  readonly barrel: BarrelPicture;
}

export type Planned = PlannedPlate | { readonly problem: Key };

export type PlannedPacked =
  (Omit<PlannedPlate, 'plate'> & { readonly packed: PackedPlate }) | { readonly problem: Key };

/** One plate before and after: path data in mm about its middle, y down, filled even-odd. */
export interface PlateDifference {
  readonly beforeMm: number;
  readonly afterMm: number;
  /** All that is cut away now. */
  readonly after: string;
  /** Cut away before, metal now. */
  readonly onlyBefore: string;
  /** Metal before, cut away now. */
  readonly onlyAfter: string;
}

export type Differed = PlateDifference | { readonly problem: Key };

export type WantedFile =
  | { readonly kind: 'dxf'; readonly plateId: string }
  | { readonly kind: 'svg'; readonly plateId: string }
  | { readonly kind: 'spec-sheet'; readonly manner?: PaperManner }
  /** For the customer to read and sign. */
  | { readonly kind: 'proof'; readonly wish: ProofWish }
  /** DXF and SVG of every plate, the spec sheet and the design, in one zip. */
  | { readonly kind: 'all' }
  /** The same as an order that can be checked (geometry/order-file/), with its papers. */
  | { readonly kind: 'order'; readonly papers?: readonly Paper[] };

/** On which paper, in which language. */
export interface PaperManner {
  readonly page: PaperName;
  readonly language: Tongue;
}

/** What stands on a proof besides the design. */
export interface ProofWish extends PaperManner {
  /** With pages at true size. */
  readonly tiles: boolean;
  readonly shop?: ShopBook;
  readonly quote?: Quote;
  /** What else there is to choose from. */
  readonly options?: readonly { readonly name: string; readonly design: Design; readonly quote?: Quote }[];
}

/** A paper that goes along with an order, and what it is; without a spec sheet among them one is made. */
export interface Paper {
  readonly role: Exclude<OrderRole, 'cut'>;
  readonly file: MadeFile;
}

export interface MadeFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export type MadeFiles =
  | { readonly files: readonly MadeFile[] }
  | { readonly problem: Key }
  /** What must be mended first. */
  | { readonly stopped: { readonly plate: string; readonly finding: Finding } };

/** Steps of a longer work, and how many there are. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** A sound order, and whether its signature is right. */
export interface CheckedOrder extends SoundOrder {
  readonly signed: Exclude<Signed, 'wrong'>;
}

/** An order that was read and whose cut files were made again; problem: they could not be. */
export type OpenedOrder = CheckedOrder | UnsoundOrder | { readonly problem: Key };

/**
 * What the page may ask of its worker. Every answer is data; what goes wrong comes back as the name of a sentence, for
 * the page to say. The book is the same as long as the page is open.
 */
export interface PlateApi {
  /** today: by the page's clock, for what is said of the order's days; without it that is not judged. */
  make(design: Design, plateId: string, book: StockBook, today?: Day): Promise<MadePacked>;
  /** Of a plate that is refused: at which length or size its texts would hold. Gives up when something else is asked. */
  advise(design: Design, plateId: string, book: StockBook): Promise<readonly Finding[]>;
  /** The same with its cut plan: slower, for prices. */
  plan(design: Design, plateId: string, book: StockBook, today?: Day): Promise<PlannedPacked>;
  differ(before: Design, after: Design, plateId: string, book: StockBook): Promise<Differed>;
  files(
    design: Design,
    wanted: readonly WantedFile[],
    book: StockBook,
    told?: (progress: Progress) => void,
  ): Promise<MadeFiles>;
  openOrder(bytes: Uint8Array, book: StockBook, told: (progress: Progress) => void): Promise<OpenedOrder>;
}
