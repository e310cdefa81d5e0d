import type { Comparison } from '../../geometry/cutplan/cost/compare.ts';
import type { HeatMap } from '../../geometry/cutplan/cost/heat-map.ts';
import type { Price } from '../../geometry/cutplan/cost/price.ts';
import type { CutSettings, SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import type { Bite } from '../../geometry/cutplan/sheet/find-bites.ts';
import type { SlugRemedy } from '../../geometry/cutplan/sheet/slug-remedies.ts';
import type { WitnessMark } from '../../geometry/cutplan/drift/witness.ts';
import type { Design, Stock } from '../../geometry/design/schema.ts';
import type { Finding, Verdict } from '../../geometry/findings.ts';
import type { LINE_SIZES } from '../../geometry/files/job/line-sizes.ts';
import type { JobDesign } from '../../geometry/files/job/job.ts';
import type {
  Circle,
  Nest,
  NestedSheet,
  NestGaps,
  PlacedPlate,
  PlateWish,
  SheetKind,
  SheetRest,
} from '../../geometry/sheet/sheets.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Refused } from '../../geometry/sentences/wording.ts';
import type { Key } from '../words/keys.ts';
import type { MadeFile } from './plate-api.ts';

/** A design of the order; its key begins the names of its plates: `A`, then `A1`, `A2`. */
export interface OrderDesign {
  readonly key: string;
  readonly design: Design;
}

/** One plate of a design, proven, as the page draws and counts it. */
export interface CutPlate {
  /** Key and number of the plate: `A1`. */
  readonly wish: string;
  readonly key: string;
  readonly plateId: string;
  readonly job: JobDesign;
  readonly diameterMm: number;
  /** All that is cut out of it, as path data about its centre, y down, filled even-odd. */
  readonly path: string;
  readonly openings: number;
  readonly waste: readonly Circle[];
  readonly verdict: Verdict;
  /** What must be mended before it may be cut. */
  readonly stops: readonly Pick<Finding, 'sentence' | 'words'>[];
}

/** What a person wishes for the order of cutting. */
export interface PlanWishes {
  /** All pieces that may tip held by small tabs. */
  readonly tabs: boolean;
  /** Pieces held by tabs one by one, by their passes. */
  readonly held: readonly string[];
  /** Words cut last of their plate. */
  readonly last: readonly string[];
  readonly witness: boolean;
  /** Stages with witness marks of their own; 1: only at the end. */
  readonly stages: number;
}

export interface PlanJob {
  readonly sheets: readonly NestedSheet[];
  readonly stock: Stock;
  readonly gaps: NestGaps;
  readonly wishes: PlanWishes;
}

export interface PlannedSheet {
  readonly plan: SheetPlan;
  readonly settings: CutSettings;
  readonly marks: readonly WitnessMark[];
  readonly findings: readonly Pick<Finding, 'sentence' | 'words'>[];
  readonly mends: readonly SlugRemedy[];
  readonly heat: HeatMap;
  /** Cuts that would spoil a plate: such a plan is not cut. */
  readonly bites: readonly Bite[];
}

/** What the whole order takes: times of all its sheets together. */
export interface OrderCost {
  readonly times: { readonly cutS: number; readonly pierceS: number; readonly rapidS: number; readonly raiseS: number };
  readonly totalS: number;
  readonly cuttingMm: number;
  readonly rapidMm: number;
  readonly pierces: number;
  readonly price?: Price;
}

export type SizeWish = keyof typeof LINE_SIZES;

export type WantedJobFile =
  | { readonly kind: 'dxf' | 'svg'; readonly sheet: number; readonly plate?: PlacedPlate }
  | { readonly kind: 'list-csv' | 'list-pdf'; readonly sheet: number; readonly plate?: undefined }
  | { readonly kind: 'zip' };

export interface FileWishes {
  readonly size: SizeWish;
  readonly witness: boolean;
  /** The ways between cuts, on a layer of their own. */
  readonly moves: boolean;
  /** Why the plan no longer fits its designs, in English: the files then say so. */
  readonly outdated: readonly string[];
}

export interface SeriesRow {
  readonly line: number;
  readonly name: string;
  readonly reason?: Refused | Pick<Finding, 'sentence' | 'words'>;
}

export interface SeriesProgress {
  readonly done: number;
  /** Of those: made by an earlier run, and only taken from there. */
  readonly known: number;
  readonly of: number;
  readonly failed: readonly SeriesRow[];
}

/** Too large to travel as bytes: the browser may keep it on disk. */
export type LargeFile = Omit<MadeFile, 'bytes'> & { readonly bytes: Blob };

export type SeriesEnd =
  | { readonly file: LargeFile; readonly made: number; readonly of: number; readonly cancelled: boolean }
  | { readonly refused: Refused }
  | { readonly problem: Key };

/** What a table holds before it is made. */
export type SeriesHead =
  | { readonly columns: readonly string[]; readonly rows: number; readonly known: number; readonly first?: string }
  | { readonly refused: Refused };

/** What the page Cut asks of its worker. */
export interface CutApi {
  /** The designs of the order, made and proven; what is asked afterwards is about these. */
  take(order: readonly OrderDesign[], book: StockBook): Promise<readonly CutPlate[] | { readonly problem: Key }>;
  nest(
    wishes: readonly PlateWish[],
    kinds: readonly SheetKind[],
    gaps: NestGaps,
    kept: readonly NestedSheet[],
  ): Promise<Nest>;
  /** Plans are kept: the sheets before it are planned too, equal ones once. */
  plan(job: PlanJob, sheet: number): Promise<PlannedSheet>;
  /** Plans all sheets that are not planned yet. */
  cost(job: PlanJob, rest: SheetRest | undefined): Promise<OrderCost>;
  /** Every process of the shop for one plate of the order. */
  compare(wish: string): Promise<Comparison | undefined>;
  files(
    job: PlanJob,
    wanted: WantedJobFile,
    wishes: FileWishes,
  ): Promise<{ readonly file: MadeFile } | { readonly problem: Key }>;
  readTable(design: Design, bytes: Uint8Array, book: StockBook): Promise<SeriesHead>;
  series(
    design: Design,
    bytes: Uint8Array,
    book: StockBook,
    /** Makes all rows again, also those that an earlier run made. */
    anew: boolean,
    told: (progress: SeriesProgress) => void,
  ): Promise<SeriesEnd>;
  cancelSeries(): Promise<void>;
}
