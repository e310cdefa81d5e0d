import { MOST_LINES, MOST_SHAPES } from './limits.ts';
import type { Artwork, DesignElement } from './schema.ts';

/** How much there is to work out in a design. */
export interface Amount {
  /** Letters, dashes and copies of drawings. */
  readonly shapes: number;
  /** Lines and curves of drawings brought in, each copy counted. */
  readonly lines: number;
}

export function amountOf(elements: readonly DesignElement[]): Amount {
  let [shapes, lines] = [0, 0];
  for (const element of elements) {
    const copies = 'around' in element && element.around !== 'once' ? element.around.count : 1;
    shapes += 'text' in element ? element.text.length : 'count' in element ? Number(element.count) || 1 : copies;
    if (element.kind === 'artwork') lines += copies * commandsOf(element);
  }
  return { shapes, lines };
}

/** True for a design that can't be worked out in any time that a person would wait. */
export function isTooMuch({ shapes, lines }: Amount): boolean {
  return shapes > MOST_SHAPES || lines > MOST_LINES;
}

function commandsOf({ path }: Artwork): number {
  return path.match(/[MLQCZ]/g)?.length ?? 0;
}
