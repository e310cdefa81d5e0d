import type { Design } from '../design/schema.ts';
import type { Finding, Place } from '../findings.ts';
import { shortText } from './short-text.ts';
import type { ReadText } from './letters.ts';

type TextElement = Extract<Design['elements'][number], { text: string }>;

/** What can be said of a text from its characters alone. */
export function characterFindings(element: TextElement, read: ReadText, faceName: string, place: Place): Finding[] {
  const out: Finding[] = [];
  if (read.missing.length > 0) {
    const shown = read.missing.slice(0, 8).join(' ') + (read.missing.length > 8 ? ' …' : '');
    const one = read.missing.length === 1;
    const mended = read.mended === '' ? undefined : read.mended;
    out.push({
      code: 'missing-glyph',
      severity: 'stop',
      place,
      elementIds: [element.id],
      sentence:
        `${faceName} has no ${shown}. ` +
        (mended === undefined
          ? 'Type other characters or choose another face.'
          : `Write it without ${one ? 'it' : 'them'}, or choose another face.`),
      ...(mended !== undefined && {
        mend: {
          label: `Write “${shortText(mended)}”`,
          change: { kind: 'replace-text', elementId: element.id, text: mended },
        },
      }),
    });
  } else if (read.letters.length === 0) {
    out.push({
      code: 'empty-text',
      severity: 'note',
      place,
      elementIds: [element.id],
      sentence: 'This text is empty and cuts nothing. Type something, or take it out.',
    });
  }
  return out;
}

export function unknownFaceFinding(element: TextElement, place: Place): Finding {
  return {
    code: 'unknown-face',
    severity: 'stop',
    place,
    elementIds: [element.id],
    sentence: `The face of “${shortText(element.text)}” could not be had, so it is not drawn. Choose another face.`,
  };
}

export function spreadFinding(element: TextElement, spreadMm: number, leastWebMm: number, place: Place): Finding {
  return {
    code: 'letters-spread',
    severity: 'note',
    place,
    elementIds: [element.id],
    measuredMm: spreadMm,
    limitMm: leastWebMm,
    sentence:
      `Letters of “${shortText(element.text)}” were moved apart by up to ${spreadMm.toFixed(2)} mm, ` +
      `so that ${mmText(leastWebMm)} mm of metal stays between them.`,
  };
}

export function outsidePlateFinding(
  element: TextElement,
  reachMm: number,
  plateRadiusMm: number,
  place: Place,
  mend: Finding['mend'],
): Finding {
  return {
    code: 'text-outside-plate',
    severity: 'stop',
    place,
    elementIds: [element.id],
    measuredMm: reachMm,
    limitMm: plateRadiusMm,
    sentence:
      `“${shortText(element.text)}” reaches ${(reachMm - plateRadiusMm).toFixed(1)} mm over the edge of the plate. ` +
      'Make it smaller or move it inwards.',
    ...(mend && { mend }),
  };
}

export function bandUpsideDownFinding(elementId: string, inner: number, outer: number, place: Place): Finding {
  const swapped = inner > outer ? { inner: outer, outer: inner } : undefined;
  return {
    code: 'band-upside-down',
    severity: 'stop',
    place,
    elementIds: [elementId],
    sentence: 'The outer edge of this ring must lie farther out than its inner edge. Change one of the two.',
    ...(swapped && { mend: { label: 'Swap them', change: { kind: 'move-band', elementId, ...swapped } } }),
  };
}

function mmText(mm: number): string {
  return String(Number(mm.toFixed(2)));
}
