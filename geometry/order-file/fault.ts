import { visible } from '../design/visible.ts';
import { ORDER_EN } from '../sentences/order-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { WordValues } from '../sentences/wording.ts';
import type { OrderFault } from './order-file.ts';

type FaultKey = Extract<KeyOf<typeof ORDER_EN>, `orderFault.${string}`>;

/** A fault of one file, whose name is quoted so that nothing in it can act on the reader. */
export function faultOf(file: string, key: FaultKey, values: WordValues = {}): OrderFault {
  const shown = visible(file);
  return { file: shown, ...ORDER_EN.refused(key, { file: shown, ...values }) };
}

/** A fault of the whole. */
export function fault(key: FaultKey, values: WordValues = {}): OrderFault {
  return ORDER_EN.refused(key, values);
}

/** Texts out of somebody's file, fit to be quoted. */
export function quoteTexts(texts: Readonly<Record<string, string>>): WordValues {
  return Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, visible(text)]));
}
