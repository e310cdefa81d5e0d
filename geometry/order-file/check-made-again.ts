import { canonicalJson } from '../design/canonical-json.ts';
import { fault, faultOf } from './fault.ts';
import { markedBefore } from './marks.ts';
import type { OrderFault, SoundOrder } from './order-file.ts';

/** A file to cut by, freshly made from the order's design. */
export interface MadeAgain {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Holds the files to cut by against those freshly made from the order's own design, byte for byte. It finds what
 * readOrder cannot: a file that was changed and hashed anew. ownRules: those of the stock file that the fresh ones were
 * made by (ownRules in geometry/stock/).
 */
export function checkMadeAgain(
  order: SoundOrder,
  fresh: readonly MadeAgain[],
  ownRules: object | undefined,
): readonly OrderFault[] {
  const { shopRules, version, fingerprint } = order.manifest;
  if (canonicalJson(shopRules ?? {}) !== canonicalJson(ownRules ?? {})) return [fault('orderFault.otherRules')];
  const wanted = version === 1 ? fresh.map((f) => markedBefore(f.name, f.bytes, fingerprint)) : fresh;
  const made = new Map(wanted.map(({ name, bytes }) => [name, bytes]));
  const cut = order.files.filter(({ role }) => role === 'cut');
  const there = new Set(cut.map(({ name }) => name));
  return [
    ...cut.flatMap(({ name, bytes }) => {
      const again = made.get(name);
      if (!again) return [faultOf(name, 'orderFault.madeUnknown')];
      return isSame(again, bytes) ? [] : [faultOf(name, 'orderFault.madeOther')];
    }),
    ...wanted.flatMap(({ name }) => (there.has(name) ? [] : [faultOf(name, 'orderFault.madeAbsent')])),
  ];
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
