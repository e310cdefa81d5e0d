import { ORDER_SAID_EN } from './order-said-en.ts';
import { refusedAs, sayFrom, type KeyOf } from './say.ts';
import type { Refused, Wording, WordValues } from './wording.ts';

type OrderKey = KeyOf<typeof ORDER_SAID_EN>;
export type FaultKey = Extract<OrderKey, `orderFault.${string}`>;

/** A line of an order as text. */
export function sayOfOrder(key: OrderKey, values: WordValues = {}): Wording {
  return sayFrom(ORDER_SAID_EN, key, values);
}

/** What is wrong with an order. */
export function refusedOrder(key: FaultKey, values: WordValues = {}): Refused {
  return refusedAs(sayOfOrder(key, values));
}
