import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design, Stock } from '../../geometry/design/schema.ts';
import { outlineBox } from '../../geometry/measure/outline-box.ts';
import { motifById } from '../../geometry/motifs/catalogue.ts';
import { drawMotif } from '../../geometry/motifs/draw-motif.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

export const STEEL: Stock = { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' };

/** One motif alone in the middle of a plate, so high in mm, through all stages. */
export function makeMotif(
  id: string,
  heightMm: number,
  options: Readonly<Record<string, number>> = {},
  stock: Stock = STEEL,
): { readonly result: PlateResult; readonly width: number; readonly design: Design } {
  const motif = motifById(id);
  if (!motif) throw new RangeError(`no motif ${id}`);
  const box = outlineBox(drawMotif(motif, options))!;
  const width = box.maxX - box.minX;
  const diameterMm = Math.ceil(heightMm * Math.hypot(1, width) + 60);
  const empty = emptyDesign();
  const design: Design = {
    ...empty,
    head: { ...empty.head, source: { kind: 'measured', alongMm: diameterMm + 20, acrossMm: diameterMm + 20 } },
    plates: [{ id: 'only', name: 'Only', diameter: { mm: diameterMm }, quantity: 1 }],
    stock,
    elements: [
      {
        kind: 'motif',
        id: 'm',
        motif: id,
        x: 0,
        y: 0,
        size: (2 * heightMm) / diameterMm,
        turnDeg: 0,
        around: 'once',
        options: { ...options },
      },
    ],
  };
  return {
    result: makePlate(design, 'only', { get: () => undefined, motif: motifById }, createStore(), BUILT_IN),
    width,
    design,
  };
}
