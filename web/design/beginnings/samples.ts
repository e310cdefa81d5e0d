import type { BeginningId } from '../../state/beginning-ids.ts';

/** Words on a beginning that differ from language to language: element, and their name under `begin.samples`. */
export const SAMPLES = {
  'makers-head': { what: 'oldOak', cask: 'cask', filled: 'filled', date: 'filledOn' },
  'initials-and-date': { date: 'date' },
  'golden-wedding': { golden: 'wedding', date: 'date' },
  'name-over-motif': { place: 'cellar' },
  'wreath-and-name': { above: 'house', since: 'since' },
  jubilee: { who: 'coopers', word: 'years' },
  'cask-series': { series: 'oakPerry', no: 'cask', of: 'ofTwelve' },
  'drawing-and-ring': { top: 'rowers', bottom: 'boatHouse' },
} as const satisfies Record<BeginningId, Readonly<Record<string, string>>>;
