import { plateDiameterMm } from '../../geometry/barrel/blank.ts';
import { useCurrentPlate, useDesign } from './page-context.ts';

/** Half the diameter of the plate that is looked at, mm, by which shares of the radius are shown; never 0. */
export function useRadiusMm(): number {
  const design = useDesign();
  const { spec } = useCurrentPlate();
  return Math.max(1, plateDiameterMm(design, spec).diameterMm / 2);
}
