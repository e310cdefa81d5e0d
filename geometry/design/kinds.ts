import type { Artwork, Border, DesignElement, Motif, RingText, TextElement } from './schema.ts';

/** Lettering: it has a text and a face. */
export function isText(element: DesignElement): element is TextElement {
  return element.kind === 'ringText' || element.kind === 'lineText';
}

/** What lies in a band about the centre: it has an inner and an outer radius. */
export function isBand(element: DesignElement): element is RingText | Border {
  return element.kind === 'ringText' || element.kind === 'border';
}

/** Drawings: they have a place, a size and a turn, and may go round. */
export function isDrawing(element: DesignElement): element is Motif | Artwork {
  return element.kind === 'motif' || element.kind === 'artwork';
}
