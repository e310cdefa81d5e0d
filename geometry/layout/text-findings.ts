import type { Design } from '../design/schema.ts';
import type { Finding, Place } from '../findings.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import { shortText } from '../sentences/shorten.ts';
import type { ReadText } from './letters.ts';

type TextElement = Extract<Design['elements'][number], { text: string }>;

/** What can be said of a text from its characters alone. */
export function characterFindings(element: TextElement, read: ReadText, faceName: string, place: Place): Finding[] {
  const out: Finding[] = [];
  if (read.missing.length > 0) {
    const shown = read.missing.slice(0, 8).join(' ') + (read.missing.length > 8 ? ' …' : '');
    const mended = read.mended === '' ? undefined : read.mended;
    out.push({
      code: 'missing-glyph',
      severity: 'stop',
      place,
      elementIds: [element.id],
      ...said(mended === undefined ? 'findings.missingGlyph' : 'findings.missingGlyphMended', {
        face: faceName,
        signs: shown,
        text: shortText(mended ?? ''),
      }),
      ...(mended !== undefined && {
        mend: {
          ...labelled('mends.write', { text: shortText(mended) }),
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
      ...said('findings.emptyText'),
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
    ...said('findings.unknownFace', { text: shortText(element.text) }),
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
    ...said('findings.lettersSpread', {
      text: shortText(element.text),
      spread: inMm(spreadMm, 2),
      least: inMm(leastWebMm, 2),
    }),
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
    ...said('findings.outsidePlate', { text: shortText(element.text), over: inMm(reachMm - plateRadiusMm) }),
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
    ...said('findings.bandUpsideDown'),
    ...(swapped && { mend: { ...labelled('mends.swap'), change: { kind: 'move-band', elementId, ...swapped } } }),
  };
}
