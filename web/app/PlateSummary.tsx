import { fromRim } from '../state/from-rim.ts';
import { elementWords } from '../panels/element-words.ts';
import { lengthWords } from '../ui/format-number.ts';
import { words } from '../words/en.ts';
import { useCurrentPlate, useDesign, useUi } from './page-context.ts';

/** What the picture shows, in words, for those who do not see it. */
export function PlateSummary() {
  const design = useDesign();
  const { spec, plate } = useCurrentPlate();
  const unit = useUi((s) => s.unit);
  if (plate === undefined) return null;
  const { openings, bridges, leastBridgeMm } = plate.measures;
  return (
    <p className="sr-only">
      {words.stage.summary(spec.name, lengthWords(plate.diameterMm, unit), fromRim(design).map(elementWords))}{' '}
      {words.figures.short(openings, bridges)}
      {leastBridgeMm !== undefined && `, ${words.figures.narrowest(lengthWords(leastBridgeMm, unit))}`}.
    </p>
  );
}
