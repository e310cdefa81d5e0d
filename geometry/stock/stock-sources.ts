import type { Stock } from '../design/schema.ts';
import { materialIn, processIn, type StockBook } from './stock-book.ts';

export type SourcedWhat =
  'density' | 'stiffness' | 'hot-stiffness' | 'kerf' | 'bridge' | 'torch-factor' | 'web' | 'opening' | 'rim';

/** One number behind the advice on a stock, with where it comes from; the page names it by what. */
export interface StockSource {
  readonly what: SourcedWhat;
  readonly value: number;
  readonly unit: 'mm' | 'kg/m3' | 'GPa' | 'times' | 'thicknesses' | 'kerfs';
  readonly source: string;
}

/** Every number that the advice and the rules for this stock stand on; what is not in the tables is left out. */
export function stockSources(stock: Stock, book: StockBook): StockSource[] {
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const { torchFactor, rimMarginMm } = book.rules;
  const sources: StockSource[] = [];
  if (material) {
    const { densityKgM3, elastic } = material;
    sources.push({ what: 'density', value: densityKgM3.value, unit: 'kg/m3', source: densityKgM3.source });
    if (elastic) {
      const { youngMPa, hot } = elastic;
      sources.push({ what: 'stiffness', value: youngMPa.value / 1000, unit: 'GPa', source: youngMPa.source });
      if (hot && stock.use === 'torch') {
        const { value, source } = hot.youngMPa;
        sources.push({ what: 'hot-stiffness', value: value / 1000, unit: 'GPa', source });
      }
    }
  }
  if (process) {
    const bridge = material && process.families[material.family]?.bridge;
    sources.push({ what: 'kerf', value: process.kerfMm.value, unit: 'mm', source: process.kerfMm.source });
    sources.push({
      what: 'opening',
      value: process.openingKerfs.value,
      unit: 'kerfs',
      source: process.openingKerfs.source,
    });
    if (bridge) {
      sources.push({ what: 'bridge', value: bridge.thicknesses, unit: 'thicknesses', source: bridge.source });
    }
    const { value, source } = process.webThicknesses;
    sources.push({ what: 'web', value, unit: 'thicknesses', source });
  }
  if (stock.use === 'torch') {
    sources.push({ what: 'torch-factor', value: torchFactor.value, unit: 'times', source: torchFactor.source });
  }
  sources.push({ what: 'rim', value: rimMarginMm.value, unit: 'mm', source: rimMarginMm.source });
  return sources;
}
