/**
 * What is wrong with the name of a file in an order: `path` would put it outside its folder (CWE-22), `signs` are not
 * those of a plain name, so that it could look like another (bidirectional and look-alike signs: Unicode Technical
 * Report 36, sections 2 and 3.5), `system` is a name some systems keep for themselves or change.
 */
export type NameTrouble = 'path' | 'signs' | 'system';

const LONGEST = 150;

/** Names of devices: files called so cannot be written on Windows, whatever their ending. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** undefined for a plain name: ASCII letters, digits, dash, underscore and point, no folder. */
export function nameTrouble(name: string): NameTrouble | undefined {
  if (/[/\\]|^[A-Za-z]:|^~/.test(name) || name === '.' || name === '..') return 'path';
  if (!/^[A-Za-z0-9._-]+$/.test(name)) return 'signs';
  if (/^[.-]|\.$|\.\./.test(name) || DEVICE.test(name) || name.length > LONGEST) return 'system';
  return undefined;
}

/** Two names that are one on systems that do not tell capitals from small letters. */
export function sameOnDisk(name: string): string {
  return name.toLowerCase();
}

/** A machine cuts by it, whatever it is said to be. */
export function isCutName(name: string): boolean {
  return /\.(dxf|svg)$/i.test(name);
}
