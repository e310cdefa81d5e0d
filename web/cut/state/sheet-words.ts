import type { SheetKind } from '../../../geometry/sheet/sheets.ts';
import { MM_PER_INCH } from '../../../geometry/units.ts';
import type { Unit } from '../../words/preferences.ts';
import { formatLength, formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';

/** `2500 × 1250 mm`. */
export function sizeWords(widthMm: number, heightMm: number, unit: Unit, decimals?: number): string {
  return `${formatLength(widthMm, unit, decimals)} × ${lengthWords(heightMm, unit, decimals)}`;
}

interface NamedKind extends Pick<SheetKind, 'id' | 'widthMm' | 'heightMm'> {
  readonly remnant?: boolean | undefined;
}

/** What a kind of sheet is called: its size, and that it is a remnant. Undefined for one that is no longer there. */
export function kindWords(kinds: readonly NamedKind[], id: string, unit: Unit): string | undefined {
  const kind = kinds.find((k) => k.id === id);
  if (!kind) return undefined;
  const size = sizeWords(kind.widthMm, kind.heightMm, unit);
  return kind.remnant ? t('cut.sheets.remnant', { size }) : size;
}

/** A length that a machine runs: metres, or feet. */
export function longWords(mm: number, unit: Unit): string {
  const [count, name] = unit === 'mm' ? [mm / 1000, t('cut.units.m')] : [mm / MM_PER_INCH / 12, t('cut.units.ft')];
  return `${formatNumber(count, count < 10 ? 2 : 1)} ${name}`;
}
