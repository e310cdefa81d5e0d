import type { Finding } from '../findings.ts';
import { HEAVY_KG, sheetMassKg } from '../stock/mass.ts';
import { materialById } from '../stock/materials.ts';
import { amount, said } from '../words/say.ts';
import type { CheckInput } from './input.ts';

/** A blank that is heavy to hold in place; weighed before it is cut, since somebody lifts that too. */
export function checkHeavyPlate({ design, diameterMm }: CheckInput): Finding[] {
  const material = materialById(design.stock.material);
  if (!material) return [];
  const area = (Math.PI * diameterMm * diameterMm) / 4;
  const kg = sheetMassKg(area, design.stock.thicknessMm, material.densityKgM3.value);
  if (kg <= HEAVY_KG.value) return [];
  return [
    {
      code: 'heavy-plate',
      severity: 'note',
      place: { kind: 'plate' },
      elementIds: [],
      ...said('findings.heavyPlate', { weight: amount(kg, 1) }),
    },
  ];
}
