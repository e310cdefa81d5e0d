import { formatMoney } from '../../../geometry/shop/format-money.ts';
import { toMinor } from '../../../geometry/stock/money.ts';
import { spoken } from '../t.ts';

/** An amount in the currency's smallest coins, as the language spoken writes it. */
export function moneyWords(minor: number, currency: string): string {
  return formatMoney(minor, currency, spoken());
}

/** A rate in the currency itself, to the nearest coin. */
export function rateWords(each: number, currency: string): string {
  return moneyWords(toMinor(each, currency), currency);
}
