import type { SheetThickness } from '../../../../geometry/stock/stock-book.ts';
import { setStock } from '../../../state/actions/set-fields.ts';
import { useAct, useDesign, useUi } from '../../../page/page-context.ts';
import { SelectField } from '../../../ui/fields/SelectField.tsx';
import type { Unit } from '../../../words/preferences.ts';
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
    <SelectField
      label={t('size.sheet')}
      value={now < 0 ? OWN : String(now)}
      options={[
        ...(now < 0 ? [{ value: OWN, label: t('size.otherThickness') }] : []),
        ...thicknesses.map((sheet, i) => ({ value: String(i), label: sheetWords(sheet, unit) })),
      ]}
      onChange={(to) => {
        const picked = thicknesses[Number(to)];
        if (picked !== undefined) act((d) => setStock(d, { thicknessMm: Number(picked.mm.toFixed(3)) }));
      }}
    />
  );
}

function sheetWords(sheet: SheetThickness, unit: Unit): string {
  if (sheet.label.endsWith('mm') && unit === 'mm') return sheetName(sheet);
  return `${sheetName(sheet)} (${lengthWords(sheet.mm, unit, unit === 'mm' ? 2 : 3)})`;
}
