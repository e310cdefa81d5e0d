import { MM_PER_INCH } from '../../geometry/units.ts';
import type { Unit } from '../state/tastes.ts';

/** A number without needless noughts. */
export function formatNumber(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}

/** What stands in a length field: 0.1 mm, or a hundredth of an inch. */
export function formatLength(mm: number, unit: Unit, decimals = unit === 'mm' ? 1 : 3): string {
  return formatNumber(unit === 'mm' ? mm : mm / MM_PER_INCH, decimals);
}

/** A length with its unit, for reading. */
export function lengthWords(mm: number, unit: Unit, decimals = unit === 'mm' ? 1 : 2): string {
  return unit === 'mm' ? `${formatLength(mm, unit, decimals)} mm` : `${formatLength(mm, unit, decimals)} in`;
}
