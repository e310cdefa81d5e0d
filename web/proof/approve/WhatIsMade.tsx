import { plateDiameterMm } from '../../../geometry/barrel/blank.ts';
import { materialIn } from '../../../geometry/stock/stock-book.ts';
import { useDesign, usePage, useUi } from '../../page/page-context.ts';
import { formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { materialSentence } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
import { optionFacts } from '../options/option-facts.ts';
import type { PlannedDesign } from '../state/planned-design.ts';
import text from '../../ui/text.module.css';
import css from './WhatIsMade.module.css';

const LB_PER_KG = 1 / 0.45359237;

/** Plates with their sizes, the sheet they are cut from and what it stands. */
export function WhatIsMade({ planned }: { readonly planned: PlannedDesign }) {
  const design = useDesign();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const { stock } = design;
  const material = materialIn(book, stock.material);
  const facts = optionFacts(design, book, unit, true);
  const massOf = (id: string): number | undefined =>
    planned.state === 'ready'
      ? planned.plates.find(({ plate }) => plate.plateId === id)?.plate.measures.massKg
      : undefined;
  return (
    <dl className={css.made}>
      {design.plates.map((spec) => {
        const kg = massOf(spec.id);
        return (
          <div key={spec.id}>
            <dt>{t('proof.made.plate', { name: spec.name, count: spec.quantity })}</dt>
            <dd>
              {t('proof.made.across', { across: lengthWords(plateDiameterMm(design, spec).diameterMm, unit) })}
              {kg !== undefined &&
                `, ${unit === 'mm' ? `${formatNumber(kg, 2)} kg` : `${formatNumber(kg * LB_PER_KG, 2)} lb`}`}
            </dd>
          </div>
        );
      })}
      <div>
        <dt>{t('proof.facts.material')}</dt>
        <dd>
          {facts.material}
          {material && <span className={text.sub}>{materialSentence(material)}</span>}
        </dd>
      </div>
      <div>
        <dt>{t('proof.made.use')}</dt>
        <dd>{t(`advice.recommend.for.${stock.use}`)}</dd>
      </div>
      <div>
        <dt>{t('proof.facts.face')}</dt>
        <dd>{facts.face}</dd>
      </div>
    </dl>
  );
}
