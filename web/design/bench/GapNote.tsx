import { gapAtOpenings, greatestGap } from '../../../geometry/barrel/gap-at-openings.ts';
import { surfaceOf } from '../../../geometry/barrel/surface-of.ts';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { useUi } from '../../page/page-context.ts';

/** True where a plate does not lie close all over, so that the gap is worth looking at. */
export function hasGap({ head, surface }: Pick<Design, 'head' | 'surface'>): boolean {
  return surface !== 'head' || head.crownMm !== 0;
}

/** What the plate lies on; undefined while there is none, or where it cannot lie. */
export function lyingOn(design: Design, plate: PlateResult | undefined): Surface | undefined {
  if (plate === undefined) return undefined;
  const lying = surfaceOf(design, plate.diameterMm, design.stock.thicknessMm);
  return 'surface' in lying ? lying.surface : undefined;
}

/** The greatest gap at an opening, in words. */
export function GapNote({ plate, surface }: { readonly plate: PlateResult; readonly surface: Surface | undefined }) {
  const unit = useUi((s) => s.unit);
  if (surface === undefined) return <>{t('barrel.gap.cannot')}</>;
  const greatest = greatestGap(gapAtOpenings(plate.openings, surface));
  const gap = lengthWords(greatest?.gapMm ?? 0, unit);
  const bleed = lengthWords(greatest?.bleedMm ?? 0, unit);
  return <>{t('barrel.gap.most', { gap, bleed })}</>;
}
