import { isolate } from './isolate.ts';
import type { Wording, WordValue, WordValues } from './wording.ts';

/** How one language says what stands in a sentence's gaps. */
export interface Voice {
  readonly words: (words: Wording) => string;
  readonly number: (value: number, decimals: number) => string;
  readonly length: (mm: number, decimals: number) => string;
}

/** A sentence with its gaps `{{name}}` filled, each once: what fills a gap is never searched for gaps. */
export function fillGaps(template: string, values: WordValues, voice: Voice): string {
  return template.replace(/\{\{(\w+)\}\}/g, (whole, name: string) => {
    const value = values[name];
    return value === undefined ? whole : valueText(value, voice);
  });
}

/** What fills one gap. */
export function valueText(value: WordValue, voice: Voice): string {
  if (typeof value === 'string') return isolate(value);
  if (typeof value === 'number') return voice.number(value, 3);
  if ('key' in value) return voice.words(value);
  if (!('amount' in value)) return value.map(voice.words).join(', ');
  const { amount, decimals, unit } = value;
  return unit === undefined ? voice.number(amount, decimals) : voice.length(amount, decimals);
}
