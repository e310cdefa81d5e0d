/** The languages that documents are written in. */
export type Tongue = 'en' | 'de' | 'fr' | 'es';

/**
 * A number as a language writes it, by its decimal sign alone: no sign between thousands, a minus as keyboards have it.
 * Without the system's own tables, so that the same number gives the same text on every machine. Decimal signs: Unicode
 * CLDR, from memory. keep: noughts at the end stay, as in columns of figures.
 */
export function writtenNumber(value: number, decimals: number, language: Tongue, keep = false): string {
  if (!Number.isFinite(value)) return '–';
  const fixed = value.toFixed(decimals);
  const short = keep || !fixed.includes('.') ? fixed : fixed.replace(/\.?0+$/, '');
  const plain = /^-0(\.0+)?$/.test(short) ? short.slice(1) : short;
  return language === 'en' ? plain : plain.replace('.', ',');
}
