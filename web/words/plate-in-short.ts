import { t } from './t.ts';

/** `23 openings, 12 bridges`. */
export function plateInShort(openings: number, bridges: number): string {
  return t('figures.short', {
    openings: t('figures.openingCount', { count: openings }),
    bridges: t('figures.bridgeCount', { count: bridges }),
  });
}
