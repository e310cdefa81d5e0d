import { printInName, showFingerprint } from '../design/show-fingerprint.ts';

interface MadeFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * The fingerprint that a file says of itself: whole, of orders of version 1 the first 8 digits; undefined where it says
 * none. Looked for only where our writers put it, never in what somebody typed (a title may hold the same words).
 */
export function markOf(name: string, bytes: Uint8Array): string | undefined {
  const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
  if (ending === 'dxf' || ending === 'svg') return markOfCut(MARKS[ending].exec(beginning(bytes)));
  if (ending === 'pdf') return markOfPdf(new TextDecoder('latin1').decode(bytes));
  return ending === 'json' ? markOfJson(bytes) : undefined;
}

/** Lines of notes and descriptions are one line each, so none that was typed begins as these do. */
const MARKS = {
  /** A comment (group code 999) of its own. */
  dxf: /(?:^|\n)\s*999\r?\nFingerprint: (?:[0-9a-f ]{19}\r?\n\s*999\r?\nWhole: ([0-9a-f]{64})|([0-9a-f]{8}))\r?\n/,
  svg: /<desc>Bridgehead cut file\. Fingerprint (?:[0-9a-f ]{19}, whole ([0-9a-f]{64})|([0-9a-f]{8}))\. /,
};

function markOfCut(found: RegExpExecArray | null): string | undefined {
  return found?.[1] ?? found?.[2];
}

/** Marks stand in the first lines; titles are at most 120 long. */
const BEGINNING_BYTES = 8192;

function beginning(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes.subarray(0, BEGINNING_BYTES));
}

/**
 * The subject in the document's information (ISO 32000-1, 14.3.3), which is an object of its own: `Fingerprint` and
 * its digits in whatever language, so maybe in UTF-16, of which the zeros are left out.
 */
function markOfPdf(text: string): string | undefined {
  const at = /\/Subject (\d+) 0 R/.exec(text)?.[1];
  const subject = at && new RegExp(`(?:^|[\\r\\n])${at} 0 obj\\s*\\(([^()]{0,400})\\)`).exec(text)?.[1];
  return subject ? /(?:^|[^0-9a-f])([0-9a-f]{64}|[0-9a-f]{8})$/.exec(subject.replaceAll('\0', ''))?.[1] : undefined;
}

function markOfJson(bytes: Uint8Array): string | undefined {
  try {
    const value: unknown = JSON.parse(new TextDecoder().decode(bytes));
    if (typeof value !== 'object' || value === null || !('fingerprint' in value)) return undefined;
    return typeof value.fingerprint === 'string' ? value.fingerprint : undefined;
  } catch {
    return undefined;
  }
}

/**
 * A cut file and its name as orders of version 1 had them: with the first 8 digits of the fingerprint. Nothing else of
 * it is changed, so that such an order can still be made again and compared.
 */
export function markedBefore(name: string, bytes: Uint8Array, fingerprint: string): MadeFile {
  const [digits, shown] = [fingerprint.slice(0, 8), showFingerprint(fingerprint)];
  const text = new TextDecoder()
    .decode(bytes)
    .replace(new RegExp(`(Fingerprint: )${shown}(\r?\n)\s*999\r?\nWhole: ${fingerprint}\r?\n`), `$1${digits}$2`)
    .replace(`Fingerprint ${shown}, whole ${fingerprint}.`, `Fingerprint ${digits}.`);
  return { name: name.replace(printInName(fingerprint), digits), bytes: new TextEncoder().encode(text) };
}
