/** A row for each process of the shop: may it cut this plate, how fine, at what time and price. Guesses, before any sheet is planned. */
import { offset, union } from '../../adapters/clipper.ts';
import type { Stock } from '../../design/schema.ts';
import { flattenOutline } from '../../measure/flatten.ts';
import { regionAreaMm2 } from '../../measure/ring.ts';
import type { PlateResult } from '../../plate/plate.ts';
import { checkStock } from '../../stock/check-stock.ts';
import { type Fit, materialIn, type Process, processFit, type StockBook } from '../../stock/stock-book.ts';
import { stockRules } from '../../stock/stock-rules.ts';
import { FLATTEN_ERROR_MM } from '../../units.ts';
import type { Refused } from '../../sentences/wording.ts';
import type { CutPlan } from '../cut-plan.ts';
import { estimateSeconds } from './estimate-time.ts';
import { estimateShare, type Price, computePrice } from './price.ts';
import { gapsFor, settingsFor } from './settings-for.ts';

export interface ProcessRow {
  readonly process: string;
  readonly fit: Fit;
  /** False where something stops this stock under this process: material, thickness, torch. */
  readonly isAllowed: boolean;
  /** The least it can cut in this sheet, mm. */
  readonly least: Detail;
  /** Letters, figures and signs that it would not bring out. */
  readonly lostLetters: number;
  /** For one plate; or why there is none. */
  readonly time: { readonly seconds: number } | Refused;
  /** For the plates that are wanted; absent where no time or no sheet is known. */
  readonly price?: Price;
}

/** Narrowest opening, metal between openings, and bridge, mm. */
export interface Detail {
  readonly openingMm: number;
  readonly webMm: number;
  readonly bridgeMm: number;
}

export interface Comparison {
  /** What the plate has itself; a part is absent where nothing is near enough to matter. */
  readonly plate: Partial<Detail>;
  readonly rows: readonly ProcessRow[];
}

/** In: a plate made of the design, its cut plan, the design's stock (its process does not count) and the shop's book. */
export function compareProcesses(plate: PlateResult, plan: CutPlan, stock: Stock, book: StockBook): Comparison {
  const { leastOpeningMm, leastWebMm, leastBridgeMm } = plate.measures;
  return {
    plate: {
      ...(leastOpeningMm !== undefined && { openingMm: leastOpeningMm }),
      ...(leastWebMm !== undefined && { webMm: leastWebMm }),
      ...(leastBridgeMm !== undefined && { bridgeMm: leastBridgeMm }),
    },
    rows: book.processes.map((process) => rowOf(process, plate, plan, { ...stock, process: process.id }, book)),
  };
}

function rowOf(process: Process, plate: PlateResult, plan: CutPlan, stock: Stock, book: StockBook): ProcessRow {
  const material = materialIn(book, stock.material);
  const { rules } = stockRules(stock, 'auto', book);
  const settings = settingsFor(book, stock);
  const seconds = 'problem' in settings ? undefined : estimateSeconds(plan, settings);
  const share = estimateShare(book, stock, plate.diameterMm, gapsFor(process).betweenMm);
  const { diameterMm, quantity } = plate;
  const price =
    seconds === undefined || !share
      ? undefined
      : computePrice(book, stock, {
          plates: [{ diameterMm, quantity, cuttingMm: plan.cuttingLengthMm }],
          sheets: [{ ...share, share: share.share * quantity }],
          machineS: seconds * quantity,
          setUps: Math.max(1, Math.ceil(share.share * quantity)),
        });
  return {
    process: process.id,
    fit: material ? processFit(material, process.id) : { grade: 'never', reason: '' },
    isAllowed: checkStock(stock, book).every((f) => f.severity !== 'stop'),
    least: { openingMm: rules.leastOpeningMm, webMm: rules.leastWebMm, bridgeMm: rules.leastBridgeMm },
    lostLetters: lostLetters(plate, rules.leastOpeningMm),
    time: 'problem' in settings ? settings : { seconds: seconds ?? 0 },
    ...(price && { price }),
  };
}

/** A letter that loses more of its area than this to what the cut cannot enter reads as damaged. Common practice, no source. */
const LOST_SHARE = 0.1;

/** What a round of the least opening's width can sweep of a letter is what comes out of it. */
function lostLetters({ layout }: PlateResult, leastOpeningMm: number): number {
  const lost = new Map<string, boolean>();
  return layout.shapes.filter(({ label, storeKey, outline }) => {
    if (!/^(letter|figure|sign) /.test(label)) return false;
    const known = lost.get(storeKey);
    if (known !== undefined) return known;
    const regions = union(flattenOutline(outline, FLATTEN_ERROR_MM));
    const swept = offset(offset(regions, -leastOpeningMm / 2), leastOpeningMm / 2);
    const area = (of: typeof regions): number => of.reduce((sum, region) => sum + regionAreaMm2(region), 0);
    const isLost = area(swept) < (1 - LOST_SHARE) * area(regions);
    lost.set(storeKey, isLost);
    return isLost;
  }).length;
}
