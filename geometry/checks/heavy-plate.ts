import type { Finding } from '../findings.ts';
import { sheetMassKg } from '../stock/mass.ts';
import { materialIn } from '../stock/stock-book.ts';
import { amount, said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/** A blank that is heavy to hold in place; weighed before it is cut, since somebody lifts that too. */
export function checkHeavyPlate({ design, diameterMm, book }: CheckInput): Finding[] {
  const material = materialIn(book, design.stock.material);
  if (!material) return [];
  const area = (Math.PI * diameterMm * diameterMm) / 4;
  const kg = sheetMassKg(area, design.stock.thicknessMm, material.densityKgM3.value);
  if (kg <= book.rules.heavyKg.value) return [];
  return [{ ...aboutPlate('heavy-plate', 'note'), ...said('findings.heavyPlate', { weight: amount(kg, 1) }) }];
}
