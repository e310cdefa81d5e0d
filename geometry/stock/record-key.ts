import { named, say } from '../sentences/say.ts';
import type { Wording } from '../sentences/wording.ts';
import type { Fit, Material, Process, RecordText } from './stock-book.ts';

/**
 * Where the page finds a record's text in its other languages; '' for a text that the shop has written or changed, which
 * is said as it stands.
 */
export function recordKey(
  part: 'materials' | 'processes',
  { id, ownTexts }: Pick<Material | Process, 'id' | 'ownTexts'>,
  field: RecordText,
): string {
  return ownTexts?.includes(field) ? '' : `${part}.${id}.${field}`;
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
