import type { DesignElement } from '../design/schema.ts';
import { MOTIF_LABELS } from '../motifs/labels.ts';
import { motifWords, say } from '../sentences/say.ts';
import { APPROVAL_EN } from '../sentences/approval-en.ts';
import { shortText } from '../sentences/shorten.ts';
import type { Wording } from '../sentences/wording.ts';

/** What a person would call an element: its text in quotation marks, the kind of border, the motif or the drawing's name. */
export function elementName(element: DesignElement): Wording {
  switch (element.kind) {
    case 'border':
      return say(`names.${element.style}Border`);
    case 'motif':
      return say('names.namedMotif', { motif: motifWords(motifLabel(element.motif)) });
    case 'artwork':
      return say('names.namedDrawing', { name: shortText(element.name) });
    case 'ringText':
    case 'lineText':
      return element.text.trim() === ''
        ? APPROVAL_EN.say('kinds.emptyText')
        : say('names.text', { text: shortText(element.text) });
  }
}

function motifLabel(id: string): string {
  return (Object.hasOwn(MOTIF_LABELS, id) ? MOTIF_LABELS[id] : undefined) ?? id;
}
