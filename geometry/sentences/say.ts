import { SAID_EN } from './said-en.ts';
import type { Amount, Refused, Wording, WordValue, WordValues } from './wording.ts';

type Table = typeof SAID_EN;
/** Templates by part and name. */
type Templates = Readonly<Record<string, Readonly<Record<string, string>>>>;
export type KeyOf<T extends Templates> = { [P in keyof T & string]: `${P}.${keyof T[P] & string}` }[keyof T & string];
export type SaidKey = KeyOf<Table>;
export type MendKey = Extract<SaidKey, `mends.${string}`>;
export type ReasonKey = keyof Table['reasons'];

/** One sentence, name or label of the table, filled. */
export function say(key: SaidKey, values: WordValues = {}): Wording {
  return sayFrom(SAID_EN, key, values);
}

/** The same out of another table. */
export function sayFrom(table: Templates, key: string, values: WordValues): Wording {
  const [part = '', name = ''] = key.split('.');
  return { key, values, english: fill(table[part]?.[name] ?? key, values) };
}

/** A sentence for a finding: in English, and as what other languages need. It begins with a capital. */
export function said(key: SaidKey, values: WordValues = {}): { readonly sentence: string; readonly words: Wording } {
  return saidAs(say(key, values));
}

export function saidAs(words: Wording): { readonly sentence: string; readonly words: Wording } {
  return { sentence: capitalised(words.english), words };
}

/** Why something could not be read, likewise. */
export function refused(key: SaidKey, values: WordValues = {}): Refused {
  return refusedAs(say(key, values));
}

export function refusedAs(words: Wording): Refused {
  return { problem: capitalised(words.english), words };
}

/** The label of a mend, likewise. */
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

export function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

function fill(template: string, values: WordValues): string {
  return template.replace(/\{\{(\w+)\}\}/g, (whole, name: string) => {
    const value = values[name];
    return value === undefined ? whole : inEnglish(value);
  });
}

function inEnglish(value: WordValue): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (isList(value)) return value.map((v) => v.english).join(', ');
  if ('english' in value) return value.english;
  return `${Number(value.amount.toFixed(value.decimals))}${value.unit === undefined ? '' : ` ${value.unit}`}`;
}

function isList(value: Amount | Wording | readonly Wording[]): value is readonly Wording[] {
  return Array.isArray(value);
}
