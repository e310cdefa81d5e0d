/** How hot each spot is when it is cut, by the heat measure (heat-measure.ts), for a whole sheet. */
import { contourToRing } from '../../measure/arc.ts';
import type { Point } from '../../shapes.ts';
import { runLengthMm } from '../contour-walk.ts';
import { secondsAt } from './feed.ts';
import { sampleRing, FELT_MM, spreadHeat } from '../sheet/heat-measure.ts';
import { type PassTime, timePlan } from './time-plan.ts';
import type { CutPass, CutSettings, SheetPlan } from '../sheet-plan.ts';
import { COARSE_ERROR_MM } from '../../units.ts';

export interface HeatMap {
  /** The hottest spot of each pass at the moment it is cut; heat of the pass itself left out. In the order of cutting. */
  readonly passes: readonly { readonly pass: string; readonly heat: number; readonly at: Point }[];
  /** Hottest cut in each square of a grid over the sheet, row by row from the lower left; 0 where nothing is cut. */
  readonly cells: readonly number[];
  readonly columns: number;
  readonly cellMm: number;
}

const CELL_MM = 10;
/** After so many cooling times nothing is left: exp(-7) is a thousandth. */
const COLD_TIMES = 7;

/** By the plan's own times (time-plan.ts), corners that slow the head counted. */
export function mapHeat(plan: SheetPlan, settings: CutSettings): HeatMap {
  const columns = Math.ceil(plan.widthMm / CELL_MM);
  const cells = new Array<number>(columns * Math.ceil(plan.heightMm / CELL_MM)).fill(0);
  const warm = new Warmth(settings.coolS);
  const times = timePlan(plan, settings).passes;
  const passes = plan.passes.map((pass, i) => {
    const spots = spotsOf(pass, times[i]!);
    let hottest = { heat: 0, at: pass.pierce };
    for (const spot of spots) {
      const heat = warm.at(spot);
      if (heat > hottest.heat) hottest = { heat, at: spot.at };
      const column = Math.min(columns - 1, Math.max(0, Math.floor(spot.at.x / CELL_MM)));
      const cell = Math.max(0, Math.floor(spot.at.y / CELL_MM)) * columns + column;
      if (cell < cells.length) cells[cell] = Math.max(cells[cell]!, heat);
    }
    for (const spot of spots) warm.add(spot);
    return { pass: pass.id, ...hottest };
  });
  return { passes, cells, columns, cellMm: CELL_MM };
}

interface Spot {
  readonly at: Point;
  readonly mm: number;
  /** When it is cut. */
  readonly s: number;
}

function spotsOf(pass: CutPass, { fromS, rapidS, raiseS, pierceS, cut }: PassTime): Spot[] {
  const begunS = fromS + rapidS + raiseS + pierceS;
  let run = runLengthMm(pass.leadIn);
  return sampleRing(contourToRing(pass.path, COARSE_ERROR_MM)).map(({ at, mm }) => {
    run += mm;
    return { at, mm, s: begunS + secondsAt(cut, run) };
  });
}

/** Spots cut so far, in squares as wide as heat is felt. */
class Warmth {
  private readonly squares = new Map<number, Spot[]>();

  constructor(private readonly coolS: number) {}

  add(spot: Spot): void {
    const key = keyOf(squareOf(spot.at.x), squareOf(spot.at.y));
    const known = this.squares.get(key);
    if (known) known.push(spot);
    else this.squares.set(key, [spot]);
  }

  at({ at, s }: Spot): number {
    let heat = 0;
    const [x, y] = [squareOf(at.x), squareOf(at.y)];
    for (let dx = -1; dx <= 1; dx++) {
      for (let dy = -1; dy <= 1; dy++) {
        const spots = this.squares.get(keyOf(x + dx, y + dy)) ?? [];
        // The newest last: once one is cold, so are those before it.
        for (let i = spots.length - 1; i >= 0; i--) {
          const spot = spots[i]!;
          if (s - spot.s > COLD_TIMES * this.coolS) break;
          const share = spreadHeat((spot.at.x - at.x) ** 2 + (spot.at.y - at.y) ** 2);
          if (share > 0) heat += share * spot.mm * Math.exp(-(s - spot.s) / this.coolS);
        }
      }
    }
    return heat;
  }
}

function squareOf(mm: number): number {
  return Math.floor(mm / FELT_MM);
}

function keyOf(x: number, y: number): number {
  return x * 65536 + y;
}
