import { named, say } from '../sentences/say.ts';
import type { Wording } from '../sentences/wording.ts';
import { STARTING_FILE } from './built-in-stock.ts';
import type { Fit, Material, Process } from './stock-book.ts';

/**
 * Where the page finds a record's text in its other languages; '' for a text that the shop has written or changed, which
 * is said as it stands.
 */
export function recordKey(
  part: 'materials' | 'processes',
  { id, ...record }: { readonly id: string },
  field: 'name' | 'sentence' | 'caution',
): string {
  const shipped: { readonly id: string } | undefined = STARTING_FILE[part].find((r) => r.id === id);
  const textOf = (r: object): unknown => (r as Readonly<Record<string, unknown>>)[field];
  return shipped && textOf(shipped) === textOf(record) ? `${part}.${id}.${field}` : '';
}

export function materialWords(material: Material): Wording {
  return named(recordKey('materials', material, 'name'), material.name);
}

export function processWords(process: Process): Wording {
  return named(recordKey('processes', process, 'name'), process.name);
}

/** Why a stock does not suit; a plain yes has no reason. */
export function reasonOf(fit: Fit): Wording {
  return 'why' in fit && fit.why !== undefined ? say(`reasons.${fit.why}`) : named('', fit.reason);
}
