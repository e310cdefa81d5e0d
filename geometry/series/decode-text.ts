/**
 * The text of a file that a spreadsheet wrote, whatever its encoding. UTF-8 and UTF-16 by their marks; UTF-16 without
 * one by its zero bytes; otherwise UTF-8 if it is sound, and Windows-1252 if it is not (the WHATWG Encoding Standard has
 * the same labels everywhere). Undefined for what is no text: a workbook, a picture.
 */
export function decodeText(bytes: Uint8Array): string | undefined {
  const text = decoded(bytes);
  return text === undefined || /\0|^PK\u0003\u0004/.test(text) ? undefined : text;
}

function decoded(bytes: Uint8Array): string | undefined {
  const [a, b, c] = bytes;
  if (a === 0xff && b === 0xfe) return decode('utf-16le', bytes);
  if (a === 0xfe && b === 0xff) return decode('utf-16be', bytes);
  if (a === 0xef && b === 0xbb && c === 0xbf) return decode('utf-8', bytes);
  const wide = zeroBytes(bytes);
  if (wide) return decode(wide, bytes);
  return decode('utf-8', bytes) ?? decode('windows-1252', bytes);
}

/** Undefined where the bytes are not sound in this encoding. A mark at the beginning is left out. */
function decode(encoding: string, bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** So many bytes at the beginning tell enough: a heading and some rows. */
const LOOKED_AT = 1000;

/** Separators, line ends, figures and most letters have a zero byte in UTF-16, always on the same side. */
function zeroBytes(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const counts = [0, 0];
  const looked = Math.min(bytes.length, LOOKED_AT);
  for (let i = 0; i < looked; i++) if (bytes[i] === 0) counts[i % 2]!++;
  const [even = 0, odd = 0] = counts;
  if (even + odd < looked / 4) return undefined;
  return odd > even ? 'utf-16le' : 'utf-16be';
}
