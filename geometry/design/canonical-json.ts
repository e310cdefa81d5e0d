/**
 * One text for one value: keys sorted by code unit, no spaces, numbers as JSON writes them (-0 as 0).
 * Takes plain JSON data; a part that is undefined is left out, as JSON does.
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(sorted(value));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const out: [string, unknown][] = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return Object.fromEntries(out.map(([key, part]) => [key, sorted(part)]));
}
