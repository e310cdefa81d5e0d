import type { FaceEntry } from '../../../fonts/catalogue.ts';
import type { Barrel } from '../../../geometry/barrel/barrels.ts';
import type { MotifEntry } from '../../../geometry/motif.ts';
import { reasonOf, recordKey } from '../../../geometry/stock/record-key.ts';
import type { Fit, Material, Process, SheetThickness } from '../../../geometry/stock/stock-book.ts';
import { shapeWords, sheetWords } from '../../../geometry/sentences/say.ts';
import { recordWord } from '../t.ts';
import { wordingText } from './finding-words.ts';

/*
 * Words that stand in records of the kernel, English, each looked up in the language spoken by the record's id. A
 * record that a language does not know yet is called what it is called in English.
 */

export function materialName(material: Material): string {
  return recordWord(recordKey('materials', material, 'name'), material.name);
}

export function materialSentence(material: Material): string {
  return recordWord(recordKey('materials', material, 'sentence'), material.sentence);
}

export function processName(process: Process): string {
  return recordWord(recordKey('processes', process, 'name'), process.name);
}

export function processSentence(process: Process): string {
  return recordWord(recordKey('processes', process, 'sentence'), process.sentence);
}

export function processCaution(process: Process): string {
  return recordWord(recordKey('processes', process, 'caution'), process.caution);
}

/** Why a stock does not suit; nothing for a plain yes. */
export function reasonWords(fit: Fit): string {
  return fit.grade === 'yes' ? '' : wordingText(reasonOf(fit), 'mm');
}

/** `16 ga`, `1.5 mm`. */
export function sheetName(sheet: SheetThickness): string {
  const words = sheetWords(sheet);
  return 'key' in words ? wordingText(words, 'mm') : sheet.label;
}

export function barrelName({ id, name }: Pick<Barrel, 'id' | 'name'>): string {
  return recordWord(`barrels.${id}.name`, name);
}

export function faceSuits({ id, suits }: FaceEntry): string {
  return recordWord(`faces.${id}`, suits);
}

/** By its label, which is how the kernel names a motif's shape too. */
export function motifName({ label }: Pick<MotifEntry, 'label'>): string {
  return shapeName(label);
}

/** What a shape is called by its label: `letter O`. */
export function shapeName(label: string): string {
  return wordingText(shapeWords(label), 'mm');
}
