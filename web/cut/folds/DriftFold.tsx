import { useUi } from '../../page/page-context.ts';
import { findingWords } from '../../words/say/finding-words.ts';
import { NumberField } from '../../ui/fields/NumberField.tsx';
import { t } from '../../words/t.ts';
import { Check } from '../../ui/Check.tsx';
import { useCut, useCutParts, usePlannedSheet } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import { Measured } from './Measured.tsx';

const MOST_STAGES = 4;

/** Marks in the skeleton that show whether the sheet moved, and what was measured on them. */
export function DriftFold() {
  const { work } = useCutParts();
  const wishes = useCut((s) => s.wishes);
  const planned = usePlannedSheet();
  const unit = useUi((s) => s.unit);
  return (
    <>
      <p className={text.note}>{t('cut.drift.what')}</p>
      <Check label={t('cut.drift.marks')} checked={wishes.witness} onChange={(witness) => work.wish({ witness })} />
      {wishes.witness && (
        <NumberField
          label={t('cut.drift.stages')}
          hint={t('cut.drift.stagesHint')}
          value={wishes.stages}
          whole
          least={1}
          most={MOST_STAGES}
          onChange={(stages) => work.wish({ stages })}
        />
      )}
      {planned?.findings.map((finding) => (
        <p key={finding.sentence} className={text.look}>
          {findingWords(finding, unit)}
        </p>
      ))}
      {wishes.witness && !planned && <p className={text.note}>{t('cut.order.notYet')}</p>}
      {planned && planned.marks.length > 0 && <Measured marks={planned.marks} />}
    </>
  );
}
