import { minorDigits } from '../../geometry/stock/money.ts';
import { spoken } from '../words/t.ts';

/** An amount in the currency's smallest coins, as the language spoken writes it. */
export function moneyWords(minor: number, currency: string): string {
  return new Intl.NumberFormat(spoken(), { style: 'currency', currency }).format(minor / 10 ** minorDigits(currency));
}
