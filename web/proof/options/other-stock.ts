import type { Stock } from '../../../geometry/design/schema.ts';
import type { Material, StockBook } from '../../../geometry/stock/stock-book.ts';
import { stockRules } from '../../../geometry/stock/stock-rules.ts';
import { SAME_THICKNESS_MM } from '../../../geometry/units.ts';

/**
 * The same sheet of another material, as near in thickness as the material comes in. The process stays where it cuts
 * the material; else the first that does is taken. undefined where none of the shop cuts it without a finding.
 */
export function inMaterial(book: StockBook, stock: Stock, material: Material): Stock | undefined {
  const processes = [stock.process, ...book.processes.map((p) => p.id).filter((id) => id !== stock.process)];
  const sheets = material.thicknesses.map((s) => Number(s.mm.toFixed(3)));
  const nearest = [...new Set([stock.thicknessMm, ...sheets])]
    .filter((mm) => sheets.some((s) => Math.abs(s - mm) < SAME_THICKNESS_MM))
    .sort((a, b) => Math.abs(a - stock.thicknessMm) - Math.abs(b - stock.thicknessMm));
  for (const process of processes) {
    for (const thicknessMm of nearest) {
      const tried: Stock = { ...stock, material: material.id, process, thicknessMm };
      if (stockRules(tried, 'auto', book).findings.length === 0) return tried;
    }
  }
  return undefined;
}
