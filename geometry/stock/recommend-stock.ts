import type { Stock } from '../design/schema.ts';
import { sheetMassKg } from './mass.ts';
import { type Material, materialIn, type Process, processIn, type StockBook } from './stock-book.ts';
import { stockRules } from './stock-rules.ts';
import { LEAST_SAID_MM } from '../units.ts';

/** How fine a design is on the plate in question, mm; absent when nothing is near enough to matter. */
export interface DesignDetail {
  /** Narrowest thing cut away. */
  readonly leastOpeningMm?: number | undefined;
  /** Narrowest metal between two openings. */
  readonly leastWebMm?: number | undefined;
}

/** Why a stock is recommended, as data: the page says it in its languages, with the numbers in its units. */
export type Reason =
  /** Keeps so much of its stiffness at so many degrees. */
  | { readonly code: 'stands-torch'; readonly atC: number; readonly keepsShare: number; readonly source: string }
  | { readonly code: 'lasts-in-paint'; readonly source: string }
  /** The usual stock would weigh usualKg, more than one person holds well. */
  | { readonly code: 'lighter'; readonly kg: number; readonly usualKg: number; readonly source: string }
  | { readonly code: 'holds-flat'; readonly thicknessMm: number; readonly diameterMm: number; readonly source: string }
  /** Thicker sheet would need openings or webs of thickerNeedsMm, and the design has detailMm. */
  | {
      readonly code: 'fine-detail';
      readonly detailMm: number;
      readonly thickerNeedsMm: number;
      readonly source: string;
    }
  | { readonly code: 'finest-cut'; readonly kerfMm: number; readonly source: string }
  | { readonly code: 'torch-bridges'; readonly bridgeMm: number; readonly source: string };

export type StockAdvice =
  | { readonly stock: Stock; readonly reasons: readonly Reason[] }
  /** Nothing we know cuts a design so fine; needsMm is what the finest stock asks for. */
  | { readonly tooFine: { readonly detailMm: number; readonly needsMm: number } };

/**
 * The stock we would choose for a use, a plate's diameter in mm and the design's finest detail, and why; what is
 * thought of first stands in the book's advice.
 * Whatever is recommended passes the checks of the stock itself and asks for no wider opening or web than the design
 * has; when no stock does, that is the answer.
 */
export function recommendStock(
  use: Stock['use'],
  diameterMm: number,
  detail: DesignDetail,
  book: StockBook,
): StockAdvice {
  const { advice, rules: asks } = book;
  const process = known(processIn(book, advice.process));
  const flat = (advice.flat.find((f) => diameterMm < f.belowMm) ?? known(advice.flat.at(-1))).thicknessMm;
  const materials = advice[use].map((id) => known(materialIn(book, id)));
  const usual = known(materials[0]);
  const usualKg = plateKg(usual, flat, diameterMm);
  // where the usual one is too heavy, the lighter one is asked first
  const ordered = usualKg > asks.heavyKg.value ? [...materials].reverse() : materials;

  let needsMm = Infinity;
  for (const material of ordered) {
    for (const thicknessMm of thinnerThan(material, process, flat)) {
      const stock: Stock = { material: material.id, thicknessMm, process: process.id, use };
      const { rules, findings } = stockRules(stock, 'auto', book);
      if (findings.length > 0) continue;
      needsMm = Math.min(needsMm, rules.leastOpeningMm, rules.leastWebMm);
      if (!fits(detail, rules)) continue;
      const kg = plateKg(material, thicknessMm, diameterMm);
      return {
        stock,
        reasons: [
          ...materialReasons(material, usual, kg, usualKg, use, advice.source),
          thicknessReason(stock, flat, diameterMm, detail, book),
          { code: 'finest-cut', kerfMm: process.kerfMm.value, source: process.kerfMm.source },
          ...(use === 'torch'
            ? [{ code: 'torch-bridges', bridgeMm: rules.leastBridgeMm, source: asks.torchFactor.source } as const]
            : []),
        ],
      };
    }
  }
  const detailMm = Math.min(detail.leastOpeningMm ?? Infinity, detail.leastWebMm ?? Infinity);
  return { tooFine: { detailMm, needsMm } };
}

/** Usual metric sheets of a material, the one wanted first, then thinner ones, as far as the process takes them. */
function thinnerThan(material: Material, process: Process, wantedMm: number): number[] {
  const range = process.families[material.family]?.thicknessMm;
  return material.thicknesses
    .filter((s) => s.label.endsWith('mm') && s.mm <= wantedMm)
    .map((s) => s.mm)
    .filter((mm) => range !== undefined && mm >= range.least && mm <= range.most)
    .sort((a, b) => b - a);
}

function fits(detail: DesignDetail, rules: { leastOpeningMm: number; leastWebMm: number }): boolean {
  const opening = detail.leastOpeningMm ?? Infinity;
  const web = detail.leastWebMm ?? Infinity;
  return opening >= rules.leastOpeningMm - LEAST_SAID_MM && web >= rules.leastWebMm - LEAST_SAID_MM;
}

function materialReasons(
  material: Material,
  usual: Material,
  kg: number,
  usualKg: number,
  use: Stock['use'],
  practice: string,
): Reason[] {
  if (material.id !== usual.id) return [{ code: 'lighter', kg, usualKg, source: material.densityKgM3.source }];
  const { elastic } = material;
  if (use === 'torch' && elastic?.hot) {
    const { atC, youngMPa } = elastic.hot;
    return [
      {
        code: 'stands-torch',
        atC,
        keepsShare: youngMPa.value / elastic.youngMPa.value,
        source: youngMPa.source,
      },
    ];
  }
  return [{ code: 'lasts-in-paint', source: practice }];
}

function thicknessReason(
  stock: Stock,
  flat: number,
  diameterMm: number,
  detail: DesignDetail,
  book: StockBook,
): Reason {
  const { thicknessMm } = stock;
  const practice = book.advice.source;
  if (thicknessMm === flat) return { code: 'holds-flat', thicknessMm, diameterMm, source: practice };
  const { rules } = stockRules({ ...stock, thicknessMm: flat }, 'auto', book);
  const process = known(processIn(book, stock.process));
  const opening = detail.leastOpeningMm ?? Infinity;
  return opening < rules.leastOpeningMm
    ? {
        code: 'fine-detail',
        detailMm: opening,
        thickerNeedsMm: rules.leastOpeningMm,
        source: process.openingThicknesses.source,
      }
    : {
        code: 'fine-detail',
        detailMm: detail.leastWebMm ?? Infinity,
        thickerNeedsMm: rules.leastWebMm,
        source: process.webThicknesses.source,
      };
}

function plateKg(material: Material, thicknessMm: number, diameterMm: number): number {
  return sheetMassKg((Math.PI * diameterMm * diameterMm) / 4, thicknessMm, material.densityKgM3.value);
}

function known<T>(found: T | undefined): T {
  if (found === undefined) throw new Error('a recommended stock that is not in the book');
  return found;
}
