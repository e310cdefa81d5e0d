import type { DesignElement } from '../design/schema.ts';
import { FINGER_HOLES_ID, HAND_SLOTS_ID } from '../layout/no-element.ts';
import { MOTIF_LABELS } from '../motifs/labels.ts';
import { motifWords, say } from '../sentences/say.ts';
import { shortText } from '../sentences/shorten.ts';
import type { Wording } from '../sentences/wording.ts';

/** What a person would call an element: its text in quotation marks, or the kind of border. */
export function callElement(elements: readonly DesignElement[], id: string): Wording {
  if (id === FINGER_HOLES_ID) return say('names.fingerHoles');
  if (id === HAND_SLOTS_ID) return say('names.handSlots');
  const element = elements.find((e) => e.id === id);
  if (!element) return say('names.something');
  if (element.kind === 'border') return say(`names.${element.style}Border`);
  if (element.kind === 'motif') {
    const label = Object.hasOwn(MOTIF_LABELS, element.motif) ? MOTIF_LABELS[element.motif] : undefined;
    return say('names.namedMotif', { motif: motifWords(label ?? element.motif) });
  }
  if (element.kind === 'artwork') return say('names.namedDrawing', { name: shortText(element.name) });
  return say('names.text', { text: shortText(element.text) });
}
