import type { Stock } from '../design/schema.ts';
import { materialById, THICKNESS_SOURCE } from './materials.ts';
import { processById } from './processes.ts';
import { COMMON_PRACTICE } from './sourced.ts';
import { RIM_MARGIN_MM, TORCH_FACTOR, WEB_THICKNESSES } from './stock-rules.ts';

export type SourcedWhat =
  | 'density'
  | 'stiffness'
  | 'hot-stiffness'
  | 'kerf'
  | 'bridge'
  | 'torch-factor'
  | 'web'
  | 'opening'
  | 'rim'
  | 'usual-sheets';

/** One number behind the advice on a stock, with where it comes from; the page names it by what. */
export interface StockSource {
  readonly what: SourcedWhat;
  /** Absent for a list. */
  readonly value?: number;
  readonly unit: 'mm' | 'kg/m3' | 'GPa' | 'times' | 'thicknesses' | 'kerfs' | '';
  readonly source: string;
}

/** Every number that the advice and the rules for this stock stand on; what is not in the tables is left out. */
export function stockSources(stock: Stock): StockSource[] {
  const material = materialById(stock.material);
  const process = processById(stock.process);
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
    sources.push({ what: 'usual-sheets', unit: '', source: THICKNESS_SOURCE });
  }
  if (process) {
    const bridge = material && process.bridge[material.family];
    sources.push({ what: 'kerf', value: process.kerfMm.value, unit: 'mm', source: process.kerfMm.source });
    sources.push({
      what: 'opening',
      value: process.openingKerfs.value,
      unit: 'kerfs',
      source: process.openingKerfs.source,
    });
    sources.push(
      bridge
        ? { what: 'bridge', value: bridge.thicknesses, unit: 'thicknesses', source: bridge.source }
        : { what: 'bridge', unit: '', source: COMMON_PRACTICE },
    );
  }
  if (stock.use === 'torch') {
    sources.push({ what: 'torch-factor', value: TORCH_FACTOR.value, unit: 'times', source: TORCH_FACTOR.source });
  }
  sources.push({ what: 'web', value: WEB_THICKNESSES.value, unit: 'thicknesses', source: WEB_THICKNESSES.source });
  sources.push({ what: 'rim', value: RIM_MARGIN_MM.value, unit: 'mm', source: RIM_MARGIN_MM.source });
  return sources;
}
