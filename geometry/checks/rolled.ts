import { leastBendRadiusMm } from '../barrel/bend.ts';
import type { Finding } from '../findings.ts';
import { materialWords } from '../stock/record-key.ts';
import { materialIn } from '../stock/stock-book.ts';
import { inMm, said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/** A sheet that breaks or buckles when it is rolled to the barrel's radius, or that nobody here has rolled. */
export function checkRolled({ design, lying, book }: CheckInput): Finding[] {
  const { stock } = design;
  const material = materialIn(book, stock.material);
  if ('problem' in lying || lying.surface.kind !== 'side' || !material) return [];
  const radiusMm = lying.surface.bilgeRadiusMm;
  const leastMm = leastBendRadiusMm(stock.material, stock.thicknessMm);
  const name = materialWords(material);
  if (leastMm === undefined)
    return [{ ...aboutPlate('bend-unknown', 'look'), ...said('findings.bendUnknown', { material: name }) }];
  if (radiusMm >= leastMm) return [];
  const values = {
    material: name,
    thickness: inMm(stock.thicknessMm, 2),
    radius: inMm(radiusMm, 0),
    least: inMm(leastMm, 0),
  };
  return [{ ...aboutPlate('bend-too-tight', 'stop', radiusMm, leastMm), ...said('findings.bendTight', values) }];
}
