import type { Design } from '../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { elementWords } from '../../page/element-words.ts';
import { fromRim } from '../../state/from-rim.ts';
import type { Unit } from '../../words/preferences.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { plateInShort } from '../../words/plate-in-short.ts';
import { t } from '../../words/t.ts';
import { verdictSentence } from '../../words/verdict-sentence.ts';
import { useCurrentPlate, useDesign, usePlates, useUi } from '../../page/page-context.ts';
import { useSettled } from './use-settled.ts';

/** Somebody who types hears the plate once they pause, not at every letter. */
const PAUSE_MS = 1000;

/** What the picture shows, in words, for those who do not see it; told politely when it has changed. */
export function PlateSummary() {
  const design = useDesign();
  const { spec, plate } = useCurrentPlate();
  const unit = useUi((s) => s.unit);
  const busy = usePlates((s) => s.busy);
  const now = plate === undefined || busy ? undefined : summary(design, spec.name, plate, unit);
  const said = useSettled(now, PAUSE_MS);
  return (
    <p className="sr-only" aria-live="polite" data-testid="plate-summary">
      {said}
    </p>
  );
}

/** What it says from rim to centre, how large it is, what holds it, and whether it can be cut. */
function summary(design: Design, name: string, plate: PlateResult, unit: Unit): string {
  const { openings, bridges, leastBridgeMm } = plate.measures;
  const elements = fromRim(design).map(elementWords);
  const what = t('stage.summary', {
    plate: name,
    across: lengthWords(plate.diameterMm, unit),
    elements: elements.length === 0 ? t('stage.nothingYet') : elements.join('; '),
  });
  const narrowest =
    leastBridgeMm === undefined ? '' : `, ${t('figures.narrowest', { width: lengthWords(leastBridgeMm, unit) })}`;
  const count = (severity: string): number => plate.findings.filter((f) => f.severity === severity).length;
  const verdict = openings === 0 ? '' : ` ${verdictSentence(plate.verdict, count('stop'), count('look'))}.`;
  return `${what} ${plateInShort(openings, bridges)}${narrowest}.${verdict}`;
}
