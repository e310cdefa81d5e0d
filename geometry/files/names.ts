import { printInName } from '../design/show-fingerprint.ts';
import { foldAccents } from './plain-text.ts';

const LONGEST_PART = 60;

/** `<title>-<plate>-<fingerprint>`: ASCII letters, digits and dashes only, so that any system and any controller takes it. */
export function plateFileName(title: string, plateName: string, fingerprint: string, extension: 'dxf' | 'svg'): string {
  return `${safePart(title, 'stencil')}-${safePart(plateName, 'plate')}-${safePart(printInName(fingerprint), 'draft')}.${extension}`;
}

/** Names for all plates of a design, in their order: two plates of one name get numbers, or one file would hide the other. */
export function plateFileNames(
  title: string,
  plates: readonly { readonly name: string; readonly fingerprint: string }[],
  extension: 'dxf' | 'svg',
): string[] {
  const taken = new Set<string>();
  return plates.map((plate) => {
    let name = plateFileName(title, plate.name, plate.fingerprint, extension);
    for (let n = 2; taken.has(name.toLowerCase()); n++) {
      name = plateFileName(title, `${plate.name.slice(0, LONGEST_PART - 6)} ${n}`, plate.fingerprint, extension);
    }
    taken.add(name.toLowerCase());
    return name;
  });
}

/** Part of a file name: letters, digits and dashes of ASCII, or the word given when nothing is left. */
export function safePart(text: string, otherwise: string): string {
  const safe = foldAccents(text)
    .replace(/[^A-Za-z0-9]+/g, '-')
    .slice(0, LONGEST_PART)
    .replace(/^-+|-+$/g, '');
  return safe === '' ? otherwise : safe;
}
