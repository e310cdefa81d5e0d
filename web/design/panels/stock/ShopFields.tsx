import { type Material, materialIn, processFit, processIn } from '../../../../geometry/stock/stock-book.ts';
import { setStock } from '../../../state/actions/set-fields.ts';
import { useAct, useDesign, usePage, useUi } from '../../../page/page-context.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { lengthWords } from '../../../words/say/format-number.ts';
import { LengthField } from '../../../ui/fields/LengthField.tsx';
import { SelectField } from '../../../ui/fields/SelectField.tsx';
import { materialName, processName, processSentence, reasonWords } from '../../../words/say/record-words.ts';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';
import { SheetField } from './SheetField.tsx';

/** Thickness and process: the shop's business, so a fold away, with what is set now. */
export function ShopFields() {
  const { stock } = useDesign();
  const unit = useUi((s) => s.unit);
  const { book } = usePage();
  const act = useAct();
  const material = materialIn(book, stock.material);
  const process = processIn(book, stock.process);
  const fit = material === undefined ? undefined : processFit(material, stock.process);
  const problem =
    fit === undefined || fit.grade === 'yes' || material === undefined
      ? undefined
      : t('size.unfit', { material: materialName(material), reason: reasonWords(fit) });
  const now = {
    thickness: lengthWords(stock.thicknessMm, unit, unit === 'mm' ? 2 : 3),
    process: process === undefined ? stock.process : processName(process),
  };
  return (
    <Fold title={t('advice.shop.title')} {...(problem !== undefined && { open: true })}>
      <p className={css.note}>{t('advice.shop.hint', now)}</p>
      <div className={css.pair}>
        <SheetField thicknesses={material?.thicknesses ?? []} />
        <LengthField
          label={t('size.ownThickness')}
          mm={stock.thicknessMm}
          decimals={unit === 'mm' ? 2 : 4}
          leastMm={0.05}
          mostMm={60}
          onChange={(thicknessMm) => act((d) => setStock(d, { thicknessMm }))}
        />
      </div>
      <SelectField
        label={t('size.process')}
        hint={process && processSentence(process)}
        problem={problem}
        value={stock.process}
        options={[
          ...(process === undefined ? [{ value: stock.process, label: stock.process }] : []),
          ...book.processes.map((p) => ({ value: p.id, label: processName(p) + gradeWords(material, p.id) })),
        ]}
        onChange={(to) => act((d) => setStock(d, { process: to }))}
      />
    </Fold>
  );
}

/** How well it suits, where it does not suit plainly. */
function gradeWords(material: Material | undefined, processId: string): string {
  const grade = material === undefined ? 'yes' : processFit(material, processId).grade;
  return grade === 'yes' ? '' : t(`size.fitGrades.${grade}`);
}
