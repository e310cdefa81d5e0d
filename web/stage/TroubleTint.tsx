import type { Finding } from '../../geometry/findings.ts';
import type { PlateResult } from '../../geometry/plate.ts';
import { traceRegions } from '../barrel-view/trace.ts';
import type { StagePalette } from './palette.ts';
import { PlateShape } from './PlateShape.tsx';
import type { View } from './view.ts';

/** What runs over: past the rim, into another, round into itself. */
const CODES: ReadonlySet<string> = new Set([
  'text-outside-plate',
  'text-overlap',
  'text-too-long-for-ring',
  'text-squeezed',
  'too-near-rim',
]);

/** Letters of the chosen that run over their place, tinted as the finding is; undefined when none do. */
export function troublePath(
  plate: PlateResult,
  findings: readonly Finding[],
  ids: readonly string[],
): Path2D | undefined {
  const mine = findings.filter(
    (f) => CODES.has(f.code) && f.severity !== 'note' && f.elementIds.some((id) => ids.includes(id)),
  );
  if (mine.length === 0) return undefined;
  const over = new Set(mine.flatMap((f) => f.elementIds));
  const edge = plate.diameterMm / 2 - plate.rules.rimMarginMm;
  const onlyEdge = mine.every((f) => f.code === 'text-outside-plate' || f.code === 'too-near-rim');
  const path = new Path2D();
  traceRegions(
    path,
    plate.openings
      .filter((o) => o.elementIds.some((id) => over.has(id)))
      .filter((o) => !onlyEdge || o.region.outer.some((p) => Math.hypot(p.x, p.y) > edge))
      .map((o) => o.region),
  );
  return path;
}

export function TroubleTint(props: { readonly path: Path2D; readonly view: View; readonly palette: StagePalette }) {
  const { path, view, palette } = props;
  return (
    <PlateShape
      view={view}
      draw={(ctx, px) => {
        ctx.globalAlpha = 0.5;
        ctx.fillStyle = palette.pin.stop;
        ctx.fill(path, 'evenodd');
        ctx.globalAlpha = 1;
        ctx.strokeStyle = palette.pin.stop;
        ctx.lineWidth = 1.5 * px;
        ctx.stroke(path);
      }}
    />
  );
}
