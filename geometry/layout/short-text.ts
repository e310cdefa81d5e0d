/** A text as a sentence can quote it: one line, at most 24 characters. */
export function shortText(text: string): string {
  const line = text.replace(/\s+/gu, ' ').trim();
  const chars = Array.from(line);
  return chars.length <= 24 ? line : `${chars.slice(0, 23).join('')}…`;
}
