import { loadFaces } from '../../../fonts/node-faces.ts';
import { onPlate, neutralRadiusMm, type SideSurface } from '../../../geometry/barrel/surface.ts';
import { emptyDesign, newLineText } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { middleOf } from '../../../geometry/layout/spread.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { rounded, type Claim } from '../claim.ts';

const LETTERS = 9;

export const SPREAD_CLAIMS: readonly Claim[] = [
  {
    name: 'spread-lettering-seen-evenly-set',
    wanted: 'steps seen from straight in front equal within 1e-6 mm, and not so when set evenly on the flat',
    async measure() {
      const even = await stepsSeen(false);
      const spread = await stepsSeen(true);
      const unit = `mm between the widest and the narrowest of ${spread.length} steps (on the flat ${rounded(range(even))})`;
      const ok = spread.length === LETTERS - 1 && range(spread) <= 1e-6 && range(even) > 0.1;
      return { value: rounded(range(spread)), unit, ok };
    },
  },
];

/** Steps between the middles of equal letters on a rolled plate, as they are seen: sideways, without depth. */
async function stepsSeen(spread: boolean): Promise<number[]> {
  const side = { kind: 'side', bilgeMm: 660, endMm: 580, lengthMm: 900, lines: 'along-hoops', spread } as const;
  const design: Design = {
    ...emptyDesign(),
    surface: side,
    plates: [{ id: 'large', name: 'Large', diameter: { mm: 500 }, quantity: 1 }],
    elements: [{ ...newLineText('line', 'stardos-stencil-700'), text: 'H'.repeat(LETTERS), capHeight: 0.16 }],
  };
  const surface: SideSurface = {
    kind: 'side',
    bilgeRadiusMm: 330,
    endRadiusMm: 290,
    lengthMm: 900,
    thicknessMm: design.stock.thicknessMm,
    lines: 'along-hoops',
  };
  if (neutralRadiusMm(surface) !== 330.75) throw new Error('the sheet is 1.5 mm thick');
  const plate = makePlate(design, 'large', (await loadFaces(design)).faces, createStore(), BUILT_IN);
  const xs = plate.layout.shapes.map((s) => onPlate(surface, middleOf(s)).x);
  return xs.slice(1).map((x, i) => x - xs[i]!);
}

function range(steps: readonly number[]): number {
  return Math.max(...steps) - Math.min(...steps);
}
