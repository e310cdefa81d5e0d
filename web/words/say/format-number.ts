import { MM_PER_INCH } from '../../../geometry/units.ts';
import type { Unit } from '../preferences.ts';
import { spoken, t } from '../t.ts';

/** A number without needless noughts, with the decimal sign of the language spoken; no sign between thousands. */
export function formatNumber(value: number, decimals: number): string {
  // A minus sign as a keyboard has it, so that what a field shows can be typed.
  return new Intl.NumberFormat(spoken(), {
    maximumFractionDigits: decimals,
    useGrouping: false,
    signDisplay: 'negative',
  })
    .format(value)
    .replace('\u2212', '-');
}

/** What stands in a length field: 0.1 mm, or a hundredth of an inch. */
export function formatLength(mm: number, unit: Unit, decimals = unit === 'mm' ? 1 : 3): string {
  return formatNumber(unit === 'mm' ? mm : mm / MM_PER_INCH, decimals);
}

/** A length with its unit, for reading. */
export function lengthWords(mm: number, unit: Unit, decimals = unit === 'mm' ? 1 : 2): string {
  return `${formatLength(mm, unit, decimals)} ${t(`page.units.${unit}`)}`;
}
