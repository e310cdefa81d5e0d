import { settingsFor } from '../../geometry/cutplan/cost/settings-for.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { TIP_LIMIT } from '../../geometry/cutplan/sheet/slugs.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import type { CutPass, SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import type { Stock } from '../../geometry/design/schema.ts';
import { contourPath, runPath } from '../../geometry/files/svg/svg-path.ts';
import { circleContour } from '../../geometry/measure/arc.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Point, Vertex } from '../../geometry/shapes.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { layer, type Layer, linePath, mm } from './layer.ts';

/** The plate alone on a sheet has this much around it, mm: room for the lead-in to its rim. */
const AROUND_MM = 40;

/** What is cut and in which order, the plate alone on a sheet. `problem` says why there is no sheet plan. */
export function cutLayers(
  plate: PlateResult,
  stock: Stock,
  book: StockBook,
): { readonly layers: readonly Layer[]; readonly problem?: string } {
  const plan = planCuts(plate);
  const net = layer('plan', plan.contours, (cut) => {
    const contour = cut.kind === 'rim' ? circleContour(cut.diameterMm / 2) : cut.contour;
    return [
      { kind: 'line', path: contourPath(contour), says: `${cut.id}${cut.kind === 'rim' ? '' : ` of ${cut.word}`}` },
    ];
  });
  const settings = settingsFor(book, stock);
  if ('problem' in settings) return { layers: [net], problem: settings.problem };
  const middle = plate.diameterMm / 2 + AROUND_MM;
  const { diameterMm } = plate;
  const placed = { id: 'A1#1', wish: 'A1', diameterMm, x: middle, y: middle, turnDeg: 0, locked: false };
  const size = { kind: 'alone', number: 1, widthMm: 2 * middle, heightMm: 2 * middle, gone: [], usedShare: 1 };
  const sheet = planSheet({ ...size, plates: [placed] }, new Map([['A1', plan]]), settings);
  return { layers: [net, ...sheetLayers(sheet, middle)] };
}

function sheetLayers({ passes, rapids, slugs }: SheetPlan, middle: number): Layer[] {
  const moved = <P extends Point>(p: P): P => ({ ...p, x: p.x - middle, y: p.y - middle });
  const run = (vertices: readonly Vertex[]) => vertices.map(moved);
  const passById = new Map(passes.map((pass) => [pass.id, pass]));
  const tipping = slugs.filter(({ tips, isTabbed }) => tips > TIP_LIMIT && !isTabbed);
  return [
    layer('cut', passes, (pass, i) => [
      { kind: 'line', path: contourPath(run(pass.path)), says: passSays(pass, i) },
      { kind: 'text', at: moved(pass.pierce), text: `${i + 1}`, says: passSays(pass, i) },
    ]),
    layer('leads', passes, (pass, i) => [
      { kind: 'line', path: runPath(run(pass.leadIn)), says: `lead-in of cut ${i + 1}` },
      ...(pass.leadOut
        ? [{ kind: 'line' as const, path: runPath(run(pass.leadOut)), says: `lead-out of cut ${i + 1}` }]
        : []),
      { kind: 'dot', at: moved(pass.pierce), says: `pierce of cut ${i + 1}` },
    ]),
    layer('rapids', rapids, ({ from, to, way, raised }) => [
      {
        kind: 'line',
        path: linePath(way.map(moved)),
        says: `${from || 'resting place'} to ${to}, ${raised ? 'raised' : 'at cutting height'}`,
      },
    ]),
    layer('slugs', tipping, ({ pass, tips, riseMm }) => [
      {
        kind: 'area',
        path: contourPath(run(passById.get(pass)?.net ?? [])),
        says: `${pass} tips with a chance of ${(100 * tips).toFixed(0)} %, up to ${mm(riseMm)} high`,
      },
    ]),
  ];
}

function passSays({ id, word, after }: CutPass, index: number): string {
  return `cut ${index + 1}: ${id} of ${word}${after.length > 0 ? `, after ${after.join(' and ')}` : ''}`;
}
