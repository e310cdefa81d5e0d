import type { LineWishes } from './job-lines.ts';
import { safePart } from '../names.ts';

/** What the name of every file of a sheet begins with; number: from 0. */
export function stemOfSheet(title: string, number: number, wishes: Pick<LineWishes, 'outdated'>): string {
  return `${stemOfOrder(title, wishes)}-sheet-${String(number + 1).padStart(2, '0')}`;
}

/** The same for the whole order; a plan that no longer fits its designs says so in every name. */
export function stemOfOrder(title: string, { outdated = [] }: Pick<LineWishes, 'outdated'>): string {
  return `${safePart(title, 'order')}${outdated.length > 0 ? '-outdated' : ''}`;
}
