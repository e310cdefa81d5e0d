import type { Finding } from '../findings.ts';
import { said, say, type SaidKey } from '../sentences/say.ts';
import type { Wording, WordValue } from '../sentences/wording.ts';

/** Said once for all letters of an element that it is true of: a hundred pins for one small text help nobody. */
const GATHERED: readonly string[] = ['speck-lost', 'island-on-its-bridge', 'held-once', 'part-swallowed'];

/**
 * Findings that say the same of several letters of one element as one that names them; it stands where the first did.
 * All others as they are, in their order.
 */
export function gatherAlike(findings: readonly Finding[]): Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const [i, finding] of findings.entries()) {
    const key = GATHERED.includes(finding.code)
      ? `${finding.code}|${finding.severity}|${finding.elementIds.join('|')}`
      : `${i}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].map((alike) => (alike.length === 1 ? alike[0]! : mergeAlike(alike)));
}

function mergeAlike(alike: readonly Finding[]): Finding {
  const first = alike[0]!;
  if (!first.words) return first;
  const names = new Map(alike.flatMap((f) => namesIn(f.words?.values['what'])).map((name) => [name.english, name]));
  const all = [...names.values()];
  const more = all.length > 3 || alike.some((f) => isShortened(f.words?.values['what']));
  const what = more ? say('names.andOthers', { names: all.slice(0, 3) }) : all;
  return { ...first, ...said(first.words.key as SaidKey, { ...first.words.values, what }) };
}

function isShortened(value: WordValue | undefined): boolean {
  return typeof value === 'object' && 'key' in value && value.key === 'names.andOthers';
}

/** The names in a list, spelled out or shortened (listed() of say.ts). */
function namesIn(value: WordValue | undefined): readonly Wording[] {
  if (typeof value !== 'object' || 'amount' in value) return [];
  if (!('english' in value)) return value;
  return isShortened(value) ? namesIn(value.values['names']) : [value];
}
