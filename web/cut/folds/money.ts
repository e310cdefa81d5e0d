import { minorDigits, toMinor } from '../../../geometry/stock/money.ts';
import { spoken } from '../../words/t.ts';

/** An amount in the currency's smallest coins, as the language spoken writes it. */
export function moneyWords(minor: number, currency: string): string {
  return new Intl.NumberFormat(spoken(), { style: 'currency', currency }).format(minor / 10 ** minorDigits(currency));
}

/** A rate in the currency itself, to the nearest coin. */
export function rateWords(each: number, currency: string): string {
  return moneyWords(toMinor(each, currency), currency);
}
