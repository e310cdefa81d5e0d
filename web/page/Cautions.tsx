import { materialIn, processIn } from '../../geometry/stock/stock-book.ts';
import { useDesign, usePage } from './page-context.ts';
import { t } from '../words/t.ts';
import css from './Cautions.module.css';
import { processCaution, processName } from '../words/say/record-words.ts';

/** The usual cautions for this stock, this process and this use; local codes come first. */
export function Cautions() {
  const { stock } = useDesign();
  const { book } = usePage();
  const process = processIn(book, stock.process);
  const cautions = [
    ...(stock.use === 'torch' ? [t('cautions.torch'), t('cautions.hot')] : [t('cautions.paint')]),
    materialIn(book, stock.material)?.family === 'metal' ? t('cautions.metal') : t('cautions.edges'),
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
