import type { Stock } from '../design/schema.ts';
import { checkStock } from './check-stock.ts';
import { HEAVY_KG, sheetMassKg } from './mass.ts';
import { type Material, materialById } from './materials.ts';
import { type Process, processById } from './processes.ts';
import { COMMON_PRACTICE } from './sourced.ts';
import { stockRules, TORCH_FACTOR } from './stock-rules.ts';

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

/** Sheet that lies flat and is not bent by handling, by the plate's diameter, mm: common practice, no source. */
const FLAT: readonly { readonly below: number; readonly thicknessMm: number }[] = [
  { below: 220, thicknessMm: 1 },
  { below: 650, thicknessMm: 1.5 },
  { below: Infinity, thicknessMm: 2 },
];

/** Best first. Stainless stands both uses for years; aluminium comes in where steel is too heavy to hold. */
const MATERIALS_FOR = {
  paint: ['stainless-304', 'aluminium-5052'],
  torch: ['stainless-304'],
} as const;

const PROCESS = 'fibre-laser';

/**
 * The stock we would choose for a use, a plate's diameter in mm and the design's finest detail, and why.
 * Whatever is recommended passes the checks of the stock itself and asks for no wider opening or web than the design
 * has; when no stock does, that is the answer.
 */
export function recommendStock(use: Stock['use'], diameterMm: number, detail: DesignDetail = {}): StockAdvice {
  const process = known(processById(PROCESS));
  const flat = FLAT.find((f) => diameterMm < f.below)?.thicknessMm ?? 2;
  const usual = known(materialById(MATERIALS_FOR[use][0]));
  const usualKg = plateKg(usual, flat, diameterMm);
  const materials = MATERIALS_FOR[use].map((id) => known(materialById(id)));
  // where the usual one is too heavy, the lighter one is asked first
  const ordered = usualKg > HEAVY_KG.value ? [...materials].reverse() : materials;

  let needsMm = Infinity;
  for (const material of ordered) {
    for (const thicknessMm of thinnerThan(material, process, flat)) {
      const stock: Stock = { material: material.id, thicknessMm, process: process.id, use };
      const { rules, findings } = stockRules(stock);
      if (findings.length > 0 || checkStock(stock).length > 0) continue;
      needsMm = Math.min(needsMm, rules.leastOpeningMm, rules.leastWebMm);
      if (!fits(detail, rules)) continue;
      const kg = plateKg(material, thicknessMm, diameterMm);
      return {
        stock,
        reasons: [
          ...materialReasons(material, usual, kg, usualKg, use),
          thicknessReason(stock, flat, diameterMm, detail),
          { code: 'finest-cut', kerfMm: process.kerfMm.value, source: process.kerfMm.source },
          ...(use === 'torch'
            ? [{ code: 'torch-bridges', bridgeMm: rules.leastBridgeMm, source: TORCH_FACTOR.source } as const]
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
  const range = process.thicknessMm[material.family];
  return material.thicknesses
    .filter((s) => s.label.endsWith('mm') && s.mm <= wantedMm)
    .map((s) => s.mm)
    .filter((mm) => range !== undefined && mm >= range.least && mm <= range.most)
    .sort((a, b) => b - a);
}

function fits(detail: DesignDetail, rules: { leastOpeningMm: number; leastWebMm: number }): boolean {
  const opening = detail.leastOpeningMm ?? Infinity;
  const web = detail.leastWebMm ?? Infinity;
  return opening >= rules.leastOpeningMm - HAIR_MM && web >= rules.leastWebMm - HAIR_MM;
}

/** Measured and wanted widths meet within this; see WIDTH_SLACK in the checks: a hundredth is not worth a word. */
const HAIR_MM = 0.01;

function materialReasons(
  material: Material,
  usual: Material,
  kg: number,
  usualKg: number,
  use: Stock['use'],
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
  return [{ code: 'lasts-in-paint', source: COMMON_PRACTICE }];
}

function thicknessReason(stock: Stock, flat: number, diameterMm: number, detail: DesignDetail): Reason {
  const { thicknessMm } = stock;
  if (thicknessMm === flat) return { code: 'holds-flat', thicknessMm, diameterMm, source: COMMON_PRACTICE };
  const { rules } = stockRules({ ...stock, thicknessMm: flat });
  const opening = detail.leastOpeningMm ?? Infinity;
  return opening < rules.leastOpeningMm
    ? {
        code: 'fine-detail',
        detailMm: opening,
        thickerNeedsMm: rules.leastOpeningMm,
        source: known(processById(stock.process)).openingThicknesses.source,
      }
    : {
        code: 'fine-detail',
        detailMm: detail.leastWebMm ?? Infinity,
        thickerNeedsMm: rules.leastWebMm,
        source: known(processById(stock.process)).bridge.metal?.source ?? COMMON_PRACTICE,
      };
}

function plateKg(material: Material, thicknessMm: number, diameterMm: number): number {
  return sheetMassKg((Math.PI * diameterMm * diameterMm) / 4, thicknessMm, material.densityKgM3.value);
}

function known<T>(found: T | undefined): T {
  if (found === undefined) throw new Error('a recommended stock that is not in the tables');
  return found;
}
