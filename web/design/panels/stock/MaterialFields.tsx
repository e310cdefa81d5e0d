import { useId } from 'react';
import type { Stock } from '../../../../geometry/design/schema.ts';
import type { Fit, Material } from '../../../../geometry/stock/stock-book.ts';
import { setStock } from '../../../state/actions/set-fields.ts';
import { useAct, useDesign, usePage } from '../../../page/page-context.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { materialName, materialSentence, reasonWords } from '../../../words/say/record-words.ts';
import { t } from '../../../words/t.ts';
import css from './StockFields.module.css';

const FINE: Fit = { grade: 'yes', reason: '' };

/** The materials, each with what it stands; those that do not suit the use a fold away, with the reason. */
export function MaterialFields() {
  const { stock } = useDesign();
  const { materials } = usePage().book;
  const group = useId();
  // What holds chlorine is listed so that nobody takes it by mistake, not to be taken.
  const suits = materials.filter((m) => fitOf(m, stock.use).grade === 'yes' && !m.holds?.includes('chlorine'));
  const others = materials.filter((m) => !suits.includes(m));
  const outside = others.some((m) => m.id === stock.material);
  return (
    <fieldset>
      <legend className={css.legend}>{t('advice.material.legend')}</legend>
      <div className={css.list}>
        {suits.map((m) => (
          <MaterialRow key={m.id} material={m} group={group} />
        ))}
      </div>
      <Fold key={stock.use} title={t('advice.material.others')} open={outside}>
        <div className={css.list}>
          {others.map((m) => (
            <MaterialRow key={m.id} material={m} group={group} />
          ))}
        </div>
      </Fold>
    </fieldset>
  );
}

function MaterialRow({ material, group }: { readonly material: Material; readonly group: string }) {
  const { stock } = useDesign();
  const act = useAct();
  const fit = fitOf(material, stock.use);
  const sentence = materialSentence(material);
  return (
    <label className={css.row}>
      <input
        type="radio"
        name={group}
        checked={stock.material === material.id}
        onChange={() => act((d) => setStock(d, { material: material.id }))}
      />
      <span>
        <span className={css.name}>{materialName(material)}</span>
        <span className={css.says}>
          {fit.grade === 'yes' ? sentence : t('advice.material.refused', { sentence, reason: sentenceCase(fit) })}
        </span>
      </span>
    </label>
  );
}

function fitOf(material: Material, use: Stock['use']): Fit {
  return use === 'torch' ? material.torch : FINE;
}

function sentenceCase(fit: Fit): string {
  const reason = reasonWords(fit);
  return reason.charAt(0).toUpperCase() + reason.slice(1);
}
