/** The beginnings, as they are offered: first come those most people want. Each is a file of web/demo/. */
export const BEGINNING_IDS = [
  'makers-head',
  'initials-and-date',
  'golden-wedding',
  'name-over-motif',
  'wreath-and-name',
  'jubilee',
  'cask-series',
  'drawing-and-ring',
] as const;

export type BeginningId = (typeof BEGINNING_IDS)[number];
