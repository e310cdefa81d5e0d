import { outlineBox } from '../measure/outline-box.ts';
import { readPathData } from '../measure/path-data.ts';
import { amountOf } from './amount.ts';
import { DOCUMENT_EN } from '../sentences/document-en.ts';
import type { Refused } from '../sentences/wording.ts';
import { MOST_LINES, MOST_SHAPES } from './limits.ts';
import type { Artwork, Design, DesignElement } from './schema.ts';
import { visible } from './visible.ts';

/**
 * What each part of a design may be, but all of it together may not: more shapes than anybody can work out, or a drawing
 * that is not what its element says. In: a design that its schema takes. Out: the first fault, or undefined.
 */
export function workFault(design: Design): Refused | undefined {
  for (const { elements } of [design, ...(design.revisions ?? []).map((r) => r.design)]) {
    const fault = elementsFault(elements);
    if (fault) return fault;
  }
  return undefined;
}

function elementsFault(elements: readonly DesignElement[]): Refused | undefined {
  for (const [i, element] of elements.entries()) {
    if (element.kind === 'artwork' && !fitsFrame(element)) {
      return DOCUMENT_EN.refused('document.artworkBox', { number: i + 1, id: visible(element.id) });
    }
  }
  return amountFault(elements);
}

/** Says that it is more than can be worked out, and what to do. */
export function amountFault(elements: readonly DesignElement[]): Refused | undefined {
  const { shapes, lines } = amountOf(elements);
  if (shapes > MOST_SHAPES) return DOCUMENT_EN.refused('document.tooMuch', { count: shapes, most: MOST_SHAPES });
  if (lines > MOST_LINES) return DOCUMENT_EN.refused('document.tooManyLines', { count: lines, most: MOST_LINES });
  return undefined;
}

/** Numbers in the path are rounded; a design that another program wrote may be rounded more. */
const FRAME_ERROR = 0.05;
/** The widest that an import lets pass (geometry/artwork/finish.ts). */
const WIDEST = 200;

/** A path that can't be read draws nothing and is a finding of the plate, so it passes here. */
function fitsFrame({ path }: Artwork): boolean {
  const read = readPathData(path);
  const box = 'problem' in read ? undefined : outlineBox(read.outline);
  if (!box) return true;
  const [wide, tall] = [box.maxX - box.minX, box.maxY - box.minY];
  const off = Math.max(Math.abs(box.minY + box.maxY) / 2, Math.abs(box.minX + box.maxX) / 2 / Math.max(1, wide));
  return Math.abs(tall - 1) <= FRAME_ERROR && wide <= WIDEST && off <= FRAME_ERROR;
}
