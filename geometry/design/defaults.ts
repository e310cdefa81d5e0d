import { DESIGN_FORMAT, DESIGN_VERSION } from './limits.ts';
import type { Border, Design, LineText, RingText } from './schema.ts';

/**
 * A design with no elements yet, for the commonest order: one large and one half-size plate in 1.5 mm stainless,
 * cut by fibre laser, for paint. The head comes from the barrel table, so that the tool asks to measure it.
 */
export function emptyDesign(): Design {
  return {
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    title: 'New stencil',
    head: { source: { kind: 'barrel', barrel: 'american-53' }, clearanceMm: 6, crownMm: 0 },
    surface: 'head',
    plates: [
      { id: 'large', name: 'Large', diameter: 'fit', quantity: 1 },
      { id: 'half', name: 'Half size', diameter: { share: 0.5 }, quantity: 1 },
    ],
    stock: { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
    elements: [],
    bridges: { width: 'auto', manner: 'hidden', edits: [] },
    ownFaces: [],
    order: { who: '', reference: '', neededBy: '', notes: '' },
  };
}

/** Lettering along the top of the rim, tall enough for a half-size plate. */
export function newRingText(id: string, face: string): RingText {
  return {
    kind: 'ringText',
    id,
    text: 'YOUR NAME',
    face,
    inner: 0.68,
    outer: 0.84,
    middleDeg: 0,
    reads: 'outward',
    tracking: 0.08,
    fit: 'natural',
  };
}

/** A line through the middle. */
export function newLineText(id: string, face: string): LineText {
  return {
    kind: 'lineText',
    id,
    text: '2027',
    face,
    x: 0,
    y: 0,
    capHeight: 0.3,
    turnDeg: 0,
    tracking: 0.04,
    fit: 'natural',
  };
}

/** A plain ring near the rim, clear of the rim margin on a half-size plate. */
export function newBorder(id: string): Border {
  return { kind: 'border', id, style: 'ring', inner: 0.9, outer: 0.925, count: 'auto' };
}
