import type { MotifEntry, MotifOption } from '../../geometry/motif.ts';
import { motifWords } from '../../geometry/sentences/say.ts';
import { recordWord } from '../words/t.ts';

/** A motif's name in the language spoken, as a title: `Bee`. */
export function motifName(motif: Pick<MotifEntry, 'label'>): string {
  const name = recordWord(motifWords(motif.label).key, motif.label);
  return name.charAt(0).toLocaleUpperCase() + name.slice(1);
}

/** What can be set about it: `Points`. */
export function optionName(motif: Pick<MotifEntry, 'label'>, option: MotifOption): string {
  return recordWord(motifWords(motif.label).key.replace(/label$/, option.id), option.label);
}
