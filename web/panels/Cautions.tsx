import { materialById } from '../../geometry/stock/materials.ts';
import { processById } from '../../geometry/stock/processes.ts';
import { useDesign } from '../app/page-context.ts';
import { words } from '../words/en.ts';
import css from './Cautions.module.css';

/** The usual cautions for this stock, this process and this use; local codes come first. */
export function Cautions() {
  const { stock } = useDesign();
  const process = processById(stock.process);
  const cautions = [
    ...(stock.use === 'torch' ? [words.cautions.torch, words.cautions.hot] : [words.cautions.paint]),
    materialById(stock.material)?.family === 'metal' ? words.cautions.metal : words.cautions.edges,
    ...(process === undefined ? [] : [`${process.name}: ${process.caution}`]),
    words.cautions.defer,
  ];
  return (
    <ul className={css.list}>
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
