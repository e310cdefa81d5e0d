import type { BridgeWishes, Stock } from '../design/schema.ts';
import type { Finding } from '../findings.ts';
import type { StockRules } from './rules.ts';
import { checkStock } from './check-stock.ts';
import type { Stiffness } from './elastic.ts';
import { type Family, type Material, materialIn, type Process, processIn, type StockBook } from './stock-book.ts';
import { inMm, said, say } from '../sentences/say.ts';

/**
 * What a stock asks of every plate cut from it, with what is wrong about the stock itself.
 * Takes the stock, the bridge width wished for (mm, or auto) and the shop's book; gives rules in mm. A material or
 * process that is not in the book is a finding that stops the cut, and the first of the book stands in for it.
 */
export function stockRules(
  stock: Stock,
  widthWish: BridgeWishes['width'],
  book: StockBook,
): { rules: StockRules; findings: Finding[] } {
  const findings = checkStock(stock, book);
  const material = materialIn(book, stock.material) ?? standIn(book.materials);
  const process = processIn(book, stock.process) ?? standIn(book.processes);
  const t = stock.thicknessMm;
  const { rules: asks } = book;
  const rule = leastBridgeMm(material, process, stock, book);
  let leastBridge = rule;
  if (widthWish !== 'auto') {
    leastBridge = Math.max(rule, widthWish.mm);
    if (widthWish.mm < rule) findings.push(widthRaised(widthWish.mm, rule, stock));
  }
  const rules: StockRules = {
    kerfMm: process.kerfMm.value,
    leastBridgeMm: leastBridge,
    leastWebMm: Math.min(rule, Math.max(process.webThicknesses.value * t, bridgeRule(process, material.family).mm)),
    leastOpeningMm: Math.max(process.openingKerfs.value * process.kerfMm.value, process.openingThicknesses.value * t),
    leastInsideRadiusMm: process.insideRadiusMm.value,
    rimMarginMm: Math.max(asks.rimMarginMm.value, asks.rimMarginThicknesses.value * t, 2 * rule),
    longestSpanMm: Math.min(
      asks.greatestSpanMm.value,
      Math.max(asks.leastSpanMm.value, asks.spanThicknesses[material.family].value * t),
    ),
    thicknessMm: t,
    ...stiffnessOf(material, stock, book),
  };
  return { rules, findings };
}

function leastBridgeMm(material: Material, process: Process, stock: Stock, book: StockBook): number {
  const { mm, thicknesses } = bridgeRule(process, material.family);
  const paint = Math.max(mm, thicknesses * stock.thicknessMm);
  return stock.use === 'torch' ? paint * book.rules.torchFactor.value : paint;
}

/** Shear modulus of an isotropic material: E / (2 (1 + Poisson's ratio)). */
function stiffnessOf(material: Material, stock: Stock, { rules }: StockBook): { stiffness?: Stiffness } {
  const { elastic, family } = material;
  if (!elastic) return {};
  const hot = stock.use === 'torch' ? elastic.hot : undefined;
  const young = (hot ?? elastic).youngMPa.value;
  const yieldMPa = elastic.yieldMPa?.value;
  const shear = elastic.shearMPa?.value ?? young / (2 * (1 + elastic.poisson.value));
  const touch = Math.min(rules.touchMm.value, rules.touchThicknesses.value * stock.thicknessMm);
  return {
    stiffness: {
      youngMPa: young,
      shearMPa: shear,
      ...(yieldMPa === undefined ? {} : { yieldMPa }),
      densityKgM3: material.densityKgM3.value,
      touchLimitMm: family === 'plastic' ? rules.springy.value * touch : touch,
      sagLimitMm: rules.sagMm.value,
      touchN: rules.touchN.value,
    },
  };
}

/** A family the process does not cut is stopped by a finding; its rule only has to be safe: the widest there is. */
function bridgeRule(process: Process, family: Family): { mm: number; thicknesses: number } {
  const own = process.families[family]?.bridge;
  if (own) return own;
  const others = Object.values(process.families).flatMap((f) => (f ? [f.bridge] : []));
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
  if (first === undefined) throw new Error('a stock book with an empty list');
  return first;
}
