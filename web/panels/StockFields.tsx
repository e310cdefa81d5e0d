import { type Fit, materialById, MATERIALS, processFit } from '../../geometry/stock/materials.ts';
import { processById, PROCESSES } from '../../geometry/stock/processes.ts';
import { setStock } from '../actions/set-stock.ts';
import { useAct, useDesign, usePage, useUi } from '../app/page-context.ts';
import { Choice } from '../ui/Choice.tsx';
import { Field } from '../ui/Field.tsx';
import fieldCss from '../ui/Field.module.css';
import { LengthField } from '../ui/LengthField.tsx';
import { t } from '../words/t.ts';
import css from './fields.module.css';
import { SheetField } from './SheetField.tsx';
import { materialName, materialSentence, processName, processSentence, reasonWords } from '../ui/record-words.ts';

/** Material, sheet, process and use; each with its sentence, and with the reason when it does not suit. */
export function StockFields() {
  const { stock } = useDesign();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const act = useAct();
  const material = materialById(stock.material);
  const process = processById(stock.process);
  const fit = material === undefined ? undefined : processFit(material, stock.process);
  const torch = material === undefined || stock.use === 'paint' ? undefined : material.torch;
  return (
    <div className={css.stack}>
      <Field label={t('size.material')} hint={material && materialSentence(material)}>
        {({ id, describedBy }) => (
          <select
            id={id}
            aria-describedby={describedBy}
            className={fieldCss.control}
            value={stock.material}
            onChange={(e) => {
              const { value } = e.target;
              act((d) => setStock(d, { material: value }));
            }}
          >
            {material === undefined && <option value={stock.material}>{stock.material}</option>}
            {MATERIALS.map((m) => (
              <option key={m.id} value={m.id}>
                {materialName(m)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div className={css.pair}>
        <SheetField thicknesses={material?.thicknesses ?? []} />
        <LengthField
          label={t('size.ownThickness')}
          mm={stock.thicknessMm}
          unit={unit}
          decimals={unit === 'mm' ? 2 : 4}
          leastMm={0.05}
          mostMm={60}
          onDone={() => design.getState().closeMerge()}
          onChange={(thicknessMm) => act((d) => setStock(d, { thicknessMm }))}
        />
      </div>
      <Field
        label={t('size.process')}
        hint={process && processSentence(process)}
        problem={
          fit === undefined || fit.grade === 'yes'
            ? undefined
            : t('size.unfit', {
                material: material === undefined ? '' : materialName(material),
                reason: reasonWords(fit),
              })
        }
      >
        {({ id, describedBy, invalid }) => (
          <select
            id={id}
            aria-describedby={describedBy}
            aria-invalid={invalid || undefined}
            className={fieldCss.control}
            value={stock.process}
            onChange={(e) => {
              const { value } = e.target;
              act((d) => setStock(d, { process: value }));
            }}
          >
            {process === undefined && <option value={stock.process}>{stock.process}</option>}
            {PROCESSES.map((p) => (
              <option key={p.id} value={p.id}>
                {processName(p)}
                {material === undefined ? '' : gradeWords(processFit(material, p.id))}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Choice
        legend={t('size.use')}
        showLegend
        value={stock.use}
        options={[
          { value: 'paint', label: t('size.paint') },
          { value: 'torch', label: t('size.torch') },
        ]}
        onChange={(use) => act((d) => setStock(d, { use }))}
      />
      {torch !== undefined && material !== undefined && (
        <p className={torch.grade === 'yes' ? css.note : fieldCss.problem}>
          {torch.grade === 'yes'
            ? t('size.torchYes', { material: materialName(material) })
            : t('size.unfit', { material: materialName(material), reason: reasonWords(torch) })}
        </p>
      )}
    </div>
  );
}

/** ` (poor)` behind the name of a process; nothing behind one that suits. */
function gradeWords({ grade }: Fit): string {
  return grade === 'yes' ? '' : ` (${t(`size.fitGrades.${grade}`)})`;
}
