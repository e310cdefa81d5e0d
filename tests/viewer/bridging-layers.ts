import { canonicalUnit } from '../../geometry/bridges/canonical-unit.ts';
import { closePinches } from '../../geometry/bridges/close-pinches.ts';
import type { Bar } from '../../geometry/bridges/bar.ts';
import { findBars } from '../../geometry/bridges/find-bars.ts';
import { findPieces, type Piece } from '../../geometry/bridges/find-pieces.ts';
import { NO_EDITS } from '../../geometry/bridges/hand-edits.ts';
import type { Manner } from '../../geometry/design/schema.ts';
import { placePoint } from '../../geometry/measure/clock.ts';
import type { Unit } from '../../geometry/openings/gather-units.ts';
import type { Point } from '../../geometry/shapes.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';
import { SHRINK_SHARE } from '../../geometry/units.ts';
import { layer, type Layer, linePath, mm, ringPath } from './layer.ts';

/**
 * What the bridging stage keeps to itself: the pieces it finds at its first look, and every bar that it thinks of, by
 * the same functions as solve-unit.ts. A person's edits are left out: they choose among bars and make none.
 */
export function bridgingLayers(units: readonly Unit[], rules: StockRules, manner: Manner): Layer[] {
  const looks = units.map((unit) => firstLook(unit, rules, manner));
  const pieces = looks.flatMap((look) => look.pieces.map((piece) => ({ ...look, piece })));
  const bars = looks.flatMap((look) => look.bars.map((bar) => ({ ...look, bar })));
  return [
    layer('pieces', pieces, ({ piece, unit, toPlate }) => [
      {
        kind: 'area',
        path: ringPath((piece.small ? piece.hole : piece.edge).map(toPlate)),
        says: pieceSays(piece, unit),
      },
    ]),
    layer('bars', bars, ({ bar, toPlate }) => [
      { kind: 'line', path: linePath([bar.from, bar.to].map(toPlate)), says: barSays(bar) },
    ]),
  ];
}

interface Look {
  readonly unit: Unit;
  /** Without the metal that reaches the rim. */
  readonly pieces: readonly Piece[];
  /** Cheapest first. */
  readonly bars: readonly Bar[];
  readonly toPlate: (p: Point) => Point;
}

function firstLook(unit: Unit, rules: StockRules, manner: Manner): Look {
  const { regions, home } = canonicalUnit(unit.regions, NO_EDITS);
  const widthMm = rules.leastBridgeMm;
  const found = findPieces(closePinches(regions), (SHRINK_SHARE * widthMm) / 2);
  const bars = findBars(found, { widthMm, leastOpeningMm: rules.leastOpeningMm, manner });
  return { unit, pieces: found.pieces.slice(1), bars, toPlate: (p) => placePoint(home.point(p), unit.frame) };
}

function pieceSays({ id, small, areaMm2, metal }: Piece, unit: Unit): string {
  const what = metal === 0 ? 'hangs on the rim by a thin neck' : `island ${metal}`;
  const labels = [...new Set(unit.shapes.map((s) => s.label))].join(', ');
  return `piece ${id} of ${unit.id} (${labels}): ${what}, ${areaMm2.toFixed(1)} mm2${small ? ', small' : ''}`;
}

function barSays({ a, b, cost, widthMm, widens, carries, from, to }: Bar): string {
  const over = carries ? ` over small piece ${carries.piece}` : '';
  const long = mm(Math.hypot(to.x - from.x, to.y - from.y));
  return `piece ${a} to ${b}${over}: cost ${cost.toFixed(2)}, ${long} long, ${mm(widthMm)} wide${widens ? ', widens a neck' : ''}`;
}
