import { materialById } from '../../geometry/stock/materials.ts';
import { processById } from '../../geometry/stock/processes.ts';
import { useDesign } from '../app/page-context.ts';
import { t } from '../words/t.ts';
import css from './Cautions.module.css';
import { processCaution, processName } from '../ui/record-words.ts';

/** The usual cautions for this stock, this process and this use; local codes come first. */
export function Cautions() {
  const { stock } = useDesign();
  const process = processById(stock.process);
  const cautions = [
    ...(stock.use === 'torch' ? [t('cautions.torch'), t('cautions.hot')] : [t('cautions.paint')]),
    materialById(stock.material)?.family === 'metal' ? t('cautions.metal') : t('cautions.edges'),
    ...(process === undefined ? [] : [`${processName(process)}: ${processCaution(process)}`]),
    t('cautions.defer'),
  ];
  return (
    <ul className={css.list}>
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
