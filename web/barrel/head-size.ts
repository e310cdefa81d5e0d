import { headDiameter } from '../../geometry/barrel/blank.ts';
import type { Head } from '../../geometry/design/schema.ts';

/** Visible head in mm. Nonsense measures still get a barrel to look at; a finding says what is wrong with them. */
export function headSize(head: Head): { readonly alongMm: number; readonly acrossMm: number } {
  const { smallerMm } = headDiameter(head);
  const sane = (mm: number): number => Math.min(3000, Math.max(50, mm));
  if (head.source.kind === 'barrel') return { alongMm: sane(smallerMm), acrossMm: sane(smallerMm) };
  return { alongMm: sane(head.source.alongMm), acrossMm: sane(head.source.acrossMm) };
}
