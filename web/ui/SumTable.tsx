import css from './SumTable.module.css';
import text from './text.module.css';

interface SumRow {
  readonly what: string;
  /** How much of it, at what rate. */
  readonly of?: string | undefined;
  readonly amount: string;
}

interface SumTableProps {
  readonly caption: string;
  readonly rows: readonly SumRow[];
  /** What they come to; `isTotal` is the sum that counts. */
  readonly sums: readonly (SumRow & { readonly isTotal?: boolean })[];
}

/** Lines and what they come to. */
export function SumTable({ caption, rows, sums }: SumTableProps) {
  return (
    <table className={css.table}>
      <caption className="sr-only">{caption}</caption>
      <tbody>
        {rows.map((row, i) => (
          <Line key={i} row={row} />
        ))}
      </tbody>
      <tfoot>
        {sums.map(({ isTotal, ...row }, i) => (
          <Line key={i} row={row} className={isTotal ? css.total : undefined} />
        ))}
      </tfoot>
    </table>
  );
}

function Line({ row: { what, of, amount }, className }: { row: SumRow; className?: string | undefined }) {
  return (
    <tr className={className}>
      <th scope="row">
        {what}
        {of !== undefined && <span className={text.sub}>{of}</span>}
      </th>
      <td>{amount}</td>
    </tr>
  );
}
