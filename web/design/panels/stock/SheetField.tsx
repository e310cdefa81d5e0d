import type { SheetThickness } from '../../../../geometry/stock/stock-book.ts';
import { setStock } from '../../../state/actions/plates/set-stock.ts';
import { useAct, useDesign, useUi } from '../../../page/page-context.ts';
import { Field } from '../../../ui/Field.tsx';
import fieldCss from '../../../ui/Field.module.css';
import { lengthWords } from '../../../words/say/format-number.ts';
import { t } from '../../../words/t.ts';
import { sheetName } from '../../../words/say/record-words.ts';
import { SAME_THICKNESS_MM } from '../../../../geometry/units.ts';

const OWN = 'own';
/** The usual sheets of a material, as they are asked for at the counter. */
export function SheetField({ thicknesses }: { readonly thicknesses: readonly SheetThickness[] }) {
  const { stock } = useDesign();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const now = thicknesses.findIndex((t) => Math.abs(t.mm - stock.thicknessMm) < SAME_THICKNESS_MM);
  return (
    <Field label={t('size.sheet')}>
      {({ id }) => (
        <select
          id={id}
          className={fieldCss.control}
          value={now < 0 ? OWN : String(now)}
          onChange={(e) => {
            const picked = thicknesses[Number(e.target.value)];
            if (picked !== undefined) act((d) => setStock(d, { thicknessMm: Number(picked.mm.toFixed(3)) }));
          }}
        >
          {now < 0 && <option value={OWN}>{t('size.otherThickness')}</option>}
          {thicknesses.map((sheet, i) => (
            <option key={sheet.label} value={String(i)}>
              {sheet.label.endsWith('mm') && unit === 'mm'
                ? sheetName(sheet)
                : `${sheetName(sheet)} (${lengthWords(sheet.mm, unit, unit === 'mm' ? 2 : 3)})`}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
