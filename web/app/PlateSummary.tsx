import { fromRim } from '../state/from-rim.ts';
import { elementWords } from '../panels/element-words.ts';
import { lengthWords } from '../ui/format-number.ts';
import { plateInShort } from '../words/plate-in-short.ts';
import { t } from '../words/t.ts';
import { useCurrentPlate, useDesign, useUi } from './page-context.ts';

/** What the picture shows, in words, for those who do not see it. */
export function PlateSummary() {
  const design = useDesign();
  const { spec, plate } = useCurrentPlate();
  const unit = useUi((s) => s.unit);
  if (plate === undefined) return null;
  const { openings, bridges, leastBridgeMm } = plate.measures;
  const elements = fromRim(design).map(elementWords);
  return (
    <p className="sr-only">
      {t('stage.summary', {
        plate: spec.name,
        across: lengthWords(plate.diameterMm, unit),
        elements: elements.length === 0 ? t('stage.nothingYet') : elements.join('; '),
      })}{' '}
      {plateInShort(openings, bridges)}
      {leastBridgeMm !== undefined && `, ${t('figures.narrowest', { width: lengthWords(leastBridgeMm, unit) })}`}.
    </p>
  );
}
