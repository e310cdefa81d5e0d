import type { Opening } from '../../../geometry/bridges/types.ts';
import type { Finding } from '../../../geometry/findings.ts';
import { ringBox } from '../../../geometry/measure/ring.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { traceRegions } from '../../barrel/painting/trace.ts';
import { PlateShape } from './canvas/PlateShape.tsx';

/** What runs over: past the rim, into another, round into itself. */
const CODES: ReadonlySet<string> = new Set([
  'text-outside-plate',
  'text-overlap',
  'text-too-long-for-ring',
  'text-squeezed',
  'too-near-rim',
]);

/** Letters of the chosen that run over their place, to be tinted; undefined when none do. */
export function troublePath(
  plate: PlateResult,
  findings: readonly Finding[],
  ids: readonly string[],
): Path2D | undefined {
  const mine = findings.filter(
    (f) => CODES.has(f.code) && f.severity !== 'note' && f.elementIds.some((id) => ids.includes(id)),
  );
  const edgeMm = plate.diameterMm / 2 - plate.rules.rimMarginMm;
  const over = plate.openings.filter((o) =>
    mine.some((f) => f.elementIds.some((id) => o.elementIds.includes(id)) && runsOver(o, f, edgeMm)),
  );
  if (over.length === 0) return undefined;
  const path = new Path2D();
  traceRegions(
    path,
    over.map((o) => o.region),
  );
  return path;
}

function runsOver({ elementIds, region }: Opening, { code, place }: Finding, edgeMm: number): boolean {
  if (code === 'text-outside-plate' || code === 'too-near-rim') {
    return region.outer.some((p) => Math.hypot(p.x, p.y) > edgeMm);
  }
  // A whole text that finds no room.
  if (code !== 'text-overlap') return true;
  if (elementIds.length > 1) return true;
  if (place.kind !== 'point') return false;
  const box = ringBox(region.outer);
  const [x, y] = [place.at.x, place.at.y];
  const r = place.radiusMm;
  return x > box.minX - r && x < box.maxX + r && y > box.minY - r && y < box.maxY + r;
}

export function TroubleTint({ path }: { readonly path: Path2D }) {
  return (
    <PlateShape
      paint={(ctx, px, palette) => {
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
