import type { OptionPart } from '../../../geometry/approval/options.ts';
import { useDesign, usePage, useUi } from '../../page/page-context.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { materialName, materialSentence } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './AddOption.module.css';
import { inMaterial } from './other-stock.ts';

interface AddMaterialProps {
  readonly onAdd: (part: OptionPart & { readonly name: string }) => void;
}

/** Materials that stand the use, each with what it stands; those that do not are not offered. */
export function AddMaterial({ onAdd }: AddMaterialProps) {
  const { stock } = useDesign();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const offered = book.materials.flatMap((material) => {
    // what holds chlorine stands in the stock file so that nobody takes it by mistake
    if (material.id === stock.material || material.holds?.includes('chlorine')) return [];
    const other = inMaterial(book, stock, material);
    return other ? [{ material, other }] : [];
  });
  if (offered.length === 0) return <p className={text.soft}>{t('proof.add.noMaterial')}</p>;
  return (
    <ul className={css.materials}>
      {offered.map(({ material, other }) => {
        const name = materialName(material);
        return (
          <li key={material.id}>
            <button type="button" className={css.material} onClick={() => onAdd({ name, stock: other })}>
              <strong>
                {t('advice.recommend.stock', {
                  thickness: lengthWords(other.thicknessMm, unit, unit === 'mm' ? 2 : 3),
                  material: name,
                })}
              </strong>
              <span>{materialSentence(material)}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}
