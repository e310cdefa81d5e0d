/** What a shop's own file says it is; apart from the schema, which the page loads only when it needs all of the file. */
export const SHOP_FORMAT = 'bridgehead-shop';
export const SHOP_VERSION = 1;
/** Longest text taken: a whole stock file may stand inside. */
export const LONGEST_SHOP_TEXT = 5_000_000;
/** Longest picture of a logo, as characters of its data: about 225 kB. */
export const LONGEST_LOGO = 300_000;
/** Pages that a shop may show, in the order in which they are offered. */
export const SHOP_PAGES = ['design', 'proof', 'cut'] as const;
export type ShopPage = (typeof SHOP_PAGES)[number];
