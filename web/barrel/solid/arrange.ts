import { surfaceOf } from '../../../geometry/barrel/surface-of.ts';
import type { HeadSurface, Surface } from '../../../geometry/barrel/surface.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { flatHead } from './head-mesh.ts';
import { barrelOf, fittingBarrel, type BarrelMeasures } from './measures.ts';
import { poseOf } from './pose.ts';
import type { Placed } from './set-views.ts';

/** A barrel with the plate it carries; no surface where the plate cannot lie on it. */
export interface Arranged extends Placed {
  readonly plate: PlateResult | undefined;
  readonly surface: Surface | undefined;
  readonly head: HeadSurface;
}

/** Free floor between two barrels, as a share of the smaller one's width. */
const BETWEEN_SHARE = 0.3;

type Wish = Pick<Design, 'head' | 'surface' | 'stock'>;

/** One plate on the design's own barrel. */
export function arrangeOne(design: Wish, plate: PlateResult | undefined): readonly Arranged[] {
  return [placedOn(design, barrelOf(design), plate, 'own')];
}

/** All plates, each on the barrel that fits it, side by side on one floor and in true proportion. */
export function arrangeAll(design: Wish, plates: readonly PlateResult[]): readonly Arranged[] {
  const each = plates.map((plate) => {
    const barrel = fittingBarrel(design, plate.diameterMm);
    return placedOn(design, barrel, plate, 'fitting');
  });
  const least = Math.min(...each.map((p) => p.pose.halfWidthMm));
  const between = 2 * least * BETWEEN_SHARE;
  const width = each.reduce((sum, p) => sum + 2 * p.pose.halfWidthMm, between * (each.length - 1));
  const floorY = Math.min(...each.map((p) => p.pose.floorY));
  let left = -width / 2;
  return each.map((p) => {
    const x = left + p.pose.halfWidthMm;
    left += 2 * p.pose.halfWidthMm + between;
    return { ...p, x, y: floorY - p.pose.floorY };
  });
}

function placedOn(
  design: Wish,
  barrel: BarrelMeasures,
  plate: PlateResult | undefined,
  on: 'own' | 'fitting',
): Arranged {
  const surface = plate && laid(design, barrel, plate, on);
  const bare = flatHead(barrel);
  const head = surface?.kind === 'head' ? surface : bare;
  const pose = poseOf(barrel, surface ?? (design.surface === 'head' ? bare : bareSide(barrel, design.surface.lines)));
  return {
    barrel,
    pose,
    x: 0,
    y: 0,
    plate,
    surface,
    head,
    plateRadiusMm: (plate?.diameterMm ?? barrel.headAcrossMm) / 2,
  };
}

function laid(design: Wish, barrel: BarrelMeasures, plate: PlateResult, on: 'own' | 'fitting'): Surface | undefined {
  const own = surfaceOf(design, plate.diameterMm, design.stock.thicknessMm);
  if (!('surface' in own)) return undefined;
  if (on === 'own' || own.surface.kind === 'side') return own.surface;
  const { headDiameterMm, crownMm, plateDiameterMm } = own.surface;
  const fittingMm = Math.min(barrel.headAcrossMm, barrel.headAlongMm);
  // Another barrel's crown was measured by nobody: in proportion.
  return { kind: 'head', headDiameterMm: fittingMm, crownMm: (crownMm * fittingMm) / headDiameterMm, plateDiameterMm };
}

function bareSide(barrel: BarrelMeasures, lines: 'along-hoops' | 'up-staves'): Surface {
  return {
    kind: 'side',
    bilgeRadiusMm: barrel.bilgeMm / 2,
    endRadiusMm: barrel.endMm / 2,
    lengthMm: barrel.lengthMm,
    thicknessMm: 1,
    lines,
  };
}
