import { JSDOM } from 'jsdom';
import type { WindowLike } from 'dompurify';
import { compose } from '../../../geometry/artwork/compose.ts';
import type { Composed, Tone } from '../../../geometry/artwork/painted.ts';
import { readSvg, type SvgDrawing } from '../../../web/design/artwork/read-svg.ts';
import type { Refusal } from '../../../web/design/artwork/svg-text.ts';

/** A browser's parser outside a browser, scripts off and nothing fetched (jsdom's default). */
export const nodeWindow = new JSDOM('').window as unknown as WindowLike & typeof globalThis;

export function readText(svg: string): SvgDrawing | { readonly refused: Refusal } {
  return readSvg(new TextEncoder().encode(svg), nodeWindow);
}

/** A whole import, as the page does it. */
export function importText(svg: string, cut: Tone = 'dark'): Composed & { readonly notes: readonly string[] } {
  const read = readText(svg);
  if ('refused' in read) throw new Error(`refused: ${read.refused}`);
  return { ...compose(read.shapes, cut), notes: read.notes };
}

/** An SVG 100 wide and high holding this. */
export function svg(inside: string, attributes = 'viewBox="0 0 100 100"'): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${inside}</svg>`;
}
