import { type KeyOf } from './make-say.ts';
import { PLATE_EN } from './plate-en.ts';
import type { Amount, Wording, WordValues } from './wording.ts';

export type SaidKey = KeyOf<typeof PLATE_EN>;
export type MendKey = Extract<SaidKey, `mends.${string}`>;
export type ReasonKey = keyof (typeof PLATE_EN)['table']['reasons'];

/** What is said of a plate, the table that is always there. */
export const { say, said, refused } = PLATE_EN;

export function labelled(key: MendKey, values: WordValues = {}): { readonly label: string; readonly words: Wording } {
  const words = say(key, values);
  return { label: words.english, words };
}

/** A name that stands in a record of its own (a material, a barrel): where the page finds it, and the record's English. */
export function named(key: string, english: string): Wording {
  return { key, values: {}, english };
}

/** A length in a sentence. */
export function inMm(value: number, decimals = 1): Amount {
  return { amount: value, decimals, unit: 'mm' };
}

/** A bare number in a sentence. */
export function amount(value: number, decimals = 0): Amount {
  return { amount: value, decimals };
}

/** A sheet as it is asked for at the counter: by gauge, or by its thickness. */
export function sheetWords({ mm, label }: { readonly mm: number; readonly label: string }): Wording | Amount {
  const gauge = /^(\d+) ga$/.exec(label)?.[1];
  return gauge === undefined ? inMm(mm, 2) : say('names.gauge', { number: gauge });
}

/** What a shape is called by its label, which is part of the design's edits and so stays English: `letter O`. */
export function shapeWords(label: string): Wording {
  const [kind, ...rest] = label.split(' ');
  const sign = rest.join(' ');
  if (kind === 'letter' && sign !== '') return say('names.letter', { sign });
  if (kind === 'figure' && sign !== '') return say('names.figure', { sign });
  if (kind === 'sign' && sign !== '') return say('names.sign', { sign });
  for (const name of ['ring', 'dash', 'bead', 'strand', 'drawing', 'motif'] as const) {
    if (label === name) return say(`names.${name}`);
  }
  return motifWords(label);
}

/** A motif by its English label: `motifs.ear-of-grain.label`. */
export function motifWords(label: string): Wording {
  return named(`motifs.${label.replaceAll(' ', '-')}.label`, label);
}

/** Several names, at most three of them spelled out. */
export function listed(names: readonly Wording[]): Wording | readonly Wording[] {
  return names.length > 3 ? say('names.andOthers', { names: names.slice(0, 3) }) : names;
}
