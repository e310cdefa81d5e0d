/** Why a file is not taken in, as the page has words for it: `artwork.refused.entities`. */
export type Refusal =
  | 'empty'
  | 'tooLarge'
  | 'entities'
  | 'tooDeep'
  | 'tooMany'
  | 'notWellFormed'
  | 'noSvg'
  | 'packed'
  | 'nothingDrawn'
  | 'nothing'
  | 'flat'
  | 'tooDetailed'
  | 'unknownKind'
  | 'noPicture'
  | 'pictureTooLarge';

/** Largest SVG file that is opened. */
const MOST_SVG_BYTES = 5_000_000;
const MOST_TAGS = 40_000;
const DEEPEST = 120;

/**
 * An SVG file's bytes to text that may be parsed: no entities of its own, not nested or long beyond measure.
 * A plain document type is cut out, so that no parser ever looks for it; so are attributes named on...: browsers look at
 * those while they parse, even where nothing may run. `handlers` tells whether there were any.
 */
export function svgText(
  bytes: Uint8Array,
): { readonly text: string; readonly handlers: boolean } | { readonly refused: Refusal } {
  if (bytes.length === 0) return { refused: 'empty' };
  if (bytes.length > MOST_SVG_BYTES) return { refused: 'tooLarge' };
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) return { refused: 'packed' };
  // Byte order marks (XML 1.0, appendix F); anything else is read as UTF-8, whatever the file claims.
  const wide =
    bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
  const raw = new TextDecoder(wide).decode(bytes);
  if (raw.includes('\u0000')) return { refused: 'notWellFormed' };
  const scanned = scan(raw);
  if ('refused' in scanned) return scanned;
  return { ...scanned, text: scanned.text.replace(/^[\s\uFEFF]*<\?xml[^>]*\?>/, '').trim() };
}

/** One pass over all markup: counts, measures depth, finds declarations wherever they stand. */
function scan(raw: string): { readonly text: string; readonly handlers: boolean } | { readonly refused: Refusal } {
  let handlers = false;
  let [tags, depth, at] = [0, 0, 0];
  let text = '';
  let kept = 0;
  for (;;) {
    const open = raw.indexOf('<', at);
    if (open < 0) break;
    if (raw.startsWith('<!--', open)) {
      const end = raw.indexOf('-->', open + 4);
      if (end < 0) return { refused: 'notWellFormed' };
      at = end + 3;
    } else if (raw.startsWith('<![CDATA[', open)) {
      const end = raw.indexOf(']]>', open + 9);
      if (end < 0) return { refused: 'notWellFormed' };
      at = end + 3;
    } else if (raw.startsWith('<?', open)) {
      const end = raw.indexOf('?>', open + 2);
      if (end < 0) return { refused: 'notWellFormed' };
      at = end + 2;
    } else if (raw.startsWith('<!', open)) {
      const end = raw.indexOf('>', open);
      const declaration = end < 0 ? raw.slice(open) : raw.slice(open, end + 1);
      if (!/^<!doctype\b/i.test(declaration) || /[[\]%&]|<!entity/i.test(declaration)) return { refused: 'entities' };
      if (end < 0) return { refused: 'notWellFormed' };
      text += raw.slice(kept, open);
      kept = at = end + 1;
    } else {
      const end = tagEnd(raw, open);
      if (end < 0) return { refused: 'notWellFormed' };
      if (raw[open + 1] === '/') depth--;
      else {
        if (++tags > MOST_TAGS) return { refused: 'tooMany' };
        if (raw[end - 1] !== '/' && ++depth > DEEPEST) return { refused: 'tooDeep' };
      }
      at = end + 1;
      const tag = raw.slice(open, at);
      const quiet = tag.replace(HANDLER, '');
      if (quiet !== tag) {
        handlers = true;
        text += raw.slice(kept, open) + quiet;
        kept = at;
      }
    }
  }
  return tags === 0 ? { refused: 'noSvg' } : { text: text + raw.slice(kept), handlers };
}

const HANDLER = /[\s/](?:[\w-]+:)?on[\w-]*\s*=\s*(?:"[^"]*"|'[^']*')/gi;

/** Where a tag ends: the first `>` outside quotes. */
function tagEnd(raw: string, open: number): number {
  let quote = '';
  for (let i = open + 1; i < raw.length; i++) {
    const c = raw[i]!;
    if (quote) {
      if (c === quote) quote = '';
    } else if (c === '"' || c === "'") quote = c;
    else if (c === '>') return i;
  }
  return -1;
}
