import type { Head } from '../design/schema.ts';
import { barrelById } from './barrels.ts';
import { headDiameter } from './blank.ts';

/** How deep a head lies below the ends of the staves, as a share of it, where nobody measured: common practice, no source. */
const RECESS_SHARE = 0.058;

/** How deep the head lies, mm, and whether somebody measured it; else by the barrel table, else in proportion. */
export function headRecess(head: Head): { readonly mm: number; readonly measured: boolean } {
  if (head.recessMm !== undefined) return { mm: head.recessMm, measured: true };
  const recess = head.source.kind === 'barrel' ? barrelById(head.source.barrel)?.recessMm : undefined;
  if (recess) return { mm: (recess.least + recess.most) / 2, measured: false };
  return { mm: RECESS_SHARE * headDiameter(head).smallerMm, measured: false };
}
