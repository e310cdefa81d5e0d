import type { BridgeWishes, Stock } from '../design/schema.ts';
import type { Finding } from '../findings.ts';
import type { StockRules } from './rules.ts';
import { checkStock } from './check-stock.ts';
import { SAG_MM, SPRINGY, type Stiffness, TOUCH_MM, TOUCH_N, TOUCH_THICKNESSES } from './elastic.ts';
import { materialById, MATERIALS, type Material } from './materials.ts';
import { PROCESSES, processById, type Family, type Process } from './processes.ts';
import { COMMON_PRACTICE, type Sourced } from './sourced.ts';
import { inMm, said, say } from '../words/say.ts';

/** Heat softens and warps a bridge: wider for the torch by this factor. */
export const TORCH_FACTOR: Sourced = { value: 1.5, source: COMMON_PRACTICE };
/** Metal between two openings: at least so many thicknesses. */
export const WEB_THICKNESSES: Sourced = { value: 1, source: 'two job-shop guides: at least the thickness (weak)' };
/** Metal to the rim: the larger of these two, and of two bridge widths. */
export const RIM_MARGIN_MM: Sourced = { value: 5, source: COMMON_PRACTICE };
export const RIM_MARGIN_THICKNESSES: Sourced = { value: 3, source: COMMON_PRACTICE };
/** An island's edge between two bridges: at most so many thicknesses, within the two limits below. */
const SPAN_THICKNESSES: Record<Family, Sourced> = {
  metal: { value: 100, source: COMMON_PRACTICE },
  plastic: { value: 60, source: COMMON_PRACTICE },
  wood: { value: 30, source: COMMON_PRACTICE },
};
export const LEAST_SPAN_MM: Sourced = { value: 60, source: COMMON_PRACTICE };
export const GREATEST_SPAN_MM: Sourced = { value: 200, source: COMMON_PRACTICE };

/**
 * What a stock asks of every plate cut from it, with what is wrong about the stock itself.
 * Takes the stock and the bridge width wished for (mm, or auto); gives rules in mm. A material or process that is
 * not in the tables is a finding that stops the cut, and 304 stainless under a fibre laser stands in for it.
 */
export function stockRules(
  stock: Stock,
  widthWish: BridgeWishes['width'] = 'auto',
): { rules: StockRules; findings: Finding[] } {
  const findings = checkStock(stock);
  const material = materialById(stock.material) ?? standIn(MATERIALS);
  const process = processById(stock.process) ?? standIn(PROCESSES);
  const t = stock.thicknessMm;
  const rule = leastBridgeMm(material, process, stock);
  let leastBridge = rule;
  if (widthWish !== 'auto') {
    leastBridge = Math.max(rule, widthWish.mm);
    if (widthWish.mm < rule) findings.push(widthRaised(widthWish.mm, rule, stock));
  }
  const rules: StockRules = {
    kerfMm: process.kerfMm.value,
    leastBridgeMm: leastBridge,
    leastWebMm: Math.min(rule, Math.max(WEB_THICKNESSES.value * t, bridgeRule(process, material.family).mm)),
    leastOpeningMm: Math.max(process.openingKerfs.value * process.kerfMm.value, process.openingThicknesses.value * t),
    leastInsideRadiusMm: process.insideRadiusMm.value,
    rimMarginMm: Math.max(RIM_MARGIN_MM.value, RIM_MARGIN_THICKNESSES.value * t, 2 * rule),
    longestSpanMm: Math.min(
      GREATEST_SPAN_MM.value,
      Math.max(LEAST_SPAN_MM.value, SPAN_THICKNESSES[material.family].value * t),
    ),
    thicknessMm: t,
    ...stiffnessOf(material, stock),
  };
  return { rules, findings };
}

function leastBridgeMm(material: Material, process: Process, stock: Stock): number {
  const { mm, thicknesses } = bridgeRule(process, material.family);
  const paint = Math.max(mm, thicknesses * stock.thicknessMm);
  return stock.use === 'torch' ? paint * TORCH_FACTOR.value : paint;
}

/** Shear modulus of an isotropic material: E / (2 (1 + Poisson's ratio)). */
function stiffnessOf(material: Material, stock: Stock): { stiffness?: Stiffness } {
  const { elastic, family } = material;
  if (!elastic) return {};
  const hot = stock.use === 'torch' ? elastic.hot : undefined;
  const young = (hot ?? elastic).youngMPa.value;
  const yieldMPa = elastic.yieldMPa?.value;
  const shear = elastic.shearMPa?.value ?? young / (2 * (1 + elastic.poisson.value));
  const touch = Math.min(TOUCH_MM.value, TOUCH_THICKNESSES.value * stock.thicknessMm);
  return {
    stiffness: {
      youngMPa: young,
      shearMPa: shear,
      ...(yieldMPa === undefined ? {} : { yieldMPa }),
      densityKgM3: material.densityKgM3.value,
      touchLimitMm: family === 'plastic' ? SPRINGY.value * touch : touch,
      sagLimitMm: SAG_MM.value,
      touchN: TOUCH_N.value,
    },
  };
}

/** A family the process does not cut is stopped by a finding; its rule only has to be safe: the widest there is. */
function bridgeRule(process: Process, family: Family): { mm: number; thicknesses: number } {
  const own = process.bridge[family];
  if (own) return own;
  const others = Object.values(process.bridge);
  return {
    mm: Math.max(...others.map((r) => r.mm), 3),
    thicknesses: Math.max(...others.map((r) => r.thicknesses), 1.5),
  };
}

function widthRaised(wishedMm: number, ruleMm: number, stock: Stock): Finding {
  return {
    code: 'bridge-width-raised',
    severity: 'note',
    place: { kind: 'plate' },
    elementIds: [],
    measuredMm: wishedMm,
    limitMm: ruleMm,
    ...said('findings.bridgeWidthRaised', {
      wished: inMm(wishedMm, 2),
      thickness: inMm(stock.thicknessMm, 2),
      use: say(stock.use === 'torch' ? 'names.underTorch' : 'names.forPaint'),
      least: inMm(ruleMm, 2),
    }),
  };
}

function standIn<T>(table: readonly T[]): T {
  const first = table[0];
  if (first === undefined) throw new Error('an empty table of stock');
  return first;
}
