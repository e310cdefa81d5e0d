import type { Design } from './schema.ts';

/** These parts say what a thing is, so they come first; all others follow by the alphabet. */
const LEADING = ['format', 'version', 'title', 'kind', 'id', 'name', 'text', 'face'];

/** The text of a design file: the same design always gives the same text, so that files can be compared. */
export function designText(design: Design): string {
  return `${JSON.stringify(ordered(design), null, 2)}\n`;
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  const entries: [string, unknown][] = Object.entries(value);
  entries.sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0));
  return Object.fromEntries(entries.map(([key, part]) => [key, ordered(part)]));
}

function rank(key: string): number {
  const at = LEADING.indexOf(key);
  return at < 0 ? LEADING.length : at;
}
