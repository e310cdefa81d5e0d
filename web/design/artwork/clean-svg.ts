import createDOMPurify from 'dompurify';
import type { WindowLike } from 'dompurify';
import type { Refusal } from './svg-text.ts';

/** Shapes and what groups them: all that is looked at. Everything else is dropped with all it holds. */
const TAGS = [
  'svg', 'g', 'a', 'defs', 'symbol', 'use', 'switch', 'path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon',
]; // prettier-ignore
const ATTRIBUTES = [
  'id', 'class', 'style', 'transform', 'd', 'x', 'y', 'width', 'height', 'rx', 'ry', 'cx', 'cy', 'r', 'x1', 'y1', 'x2',
  'y2', 'points', 'viewBox', 'preserveAspectRatio', 'href', 'xlink:href', 'fill', 'fill-rule', 'fill-opacity', 'stroke',
  'stroke-width', 'stroke-linecap', 'stroke-linejoin', 'stroke-miterlimit', 'stroke-opacity', 'opacity', 'display',
  'visibility', 'color', 'clip-path', 'mask', 'filter', 'vector-effect', 'stroke-dasharray',
]; // prettier-ignore

export interface CleanSvg {
  readonly root: Element;
  /** Text of its style elements: read for colours by class, never given to a browser. */
  readonly styles: readonly string[];
  /** Names of elements and attributes that were dropped, each once. */
  readonly dropped: readonly string[];
}

/**
 * Text of an SVG file to a tree that holds shapes and nothing that runs, loads or links. The tree belongs to a document
 * of its own that is never shown: a browser runs and fetches nothing in it (DOM Parsing, `DOMParser`).
 * In: text that svgText let pass, and the window whose parser is used.
 */
export function cleanSvg(
  text: string,
  window: WindowLike & typeof globalThis,
): CleanSvg | { readonly refused: Refusal } {
  const parsed = new window.DOMParser().parseFromString(text, 'image/svg+xml');
  if (parsed.getElementsByTagName('parsererror').length > 0) return { refused: 'notWellFormed' };
  const first = parsed.documentElement;
  if (first.localName !== 'svg') return { refused: 'noSvg' };
  const styles = Array.from(parsed.querySelectorAll('*'))
    .filter((e) => e.localName === 'style')
    .map((e) => e.textContent ?? '');
  const purify = createDOMPurify(window);
  purify.addHook('uponSanitizeAttribute', (node, data) => {
    const name = data.attrName.toLowerCase();
    const isLink = name === 'href' || name === 'xlink:href';
    if (isLink && (node.localName !== 'use' || !/^\s*#/.test(data.attrValue))) data.keepAttr = false;
    // Only names inside the same document may stand in url().
    if (/url\s*\(/i.test(data.attrValue) && !/^\s*url\(\s*['"]?#[^)]*\)\s*$/i.test(data.attrValue) && name !== 'style')
      data.keepAttr = false;
  });
  const body = purify.sanitize(new window.XMLSerializer().serializeToString(first), {
    PARSER_MEDIA_TYPE: 'application/xhtml+xml',
    NAMESPACE: 'http://www.w3.org/2000/svg',
    ALLOWED_TAGS: TAGS,
    ALLOWED_ATTR: ATTRIBUTES,
    ALLOW_DATA_ATTR: false,
    ALLOW_ARIA_ATTR: false,
    KEEP_CONTENT: false,
    SANITIZE_DOM: false,
    RETURN_DOM: true,
  }) as unknown as Element;
  const root = Array.from(body.querySelectorAll('*')).find((e) => e.localName === 'svg');
  if (!root) return { refused: 'noSvg' };
  return { root, styles, dropped: names(purify.removed) };
}

function names(removed: readonly unknown[]): string[] {
  const all = removed.map((entry) => {
    const { element, attribute } = entry as { element?: Node; attribute?: Attr | null };
    return element ? element.nodeName.toLowerCase().replace(/^.*:/, '') : (attribute?.name.toLowerCase() ?? '');
  });
  return [...new Set(all)].filter((n) => n !== '' && !n.startsWith('#') && !n.startsWith('xmlns')).sort();
}
