import { foldAccents } from '../../geometry/files/plain-text.ts';

/** A title as the first part of a file name: ASCII letters, digits and dashes, never empty. */
export function fileStem(title: string): string {
  const safe = foldAccents(title)
    .replace(/[^A-Za-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
  return safe === '' ? 'stencil' : safe;
}
