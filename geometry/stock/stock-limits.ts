/** What a stock file says it is; apart from the schema, which the page loads only for a file of the shop's own. */
export const STOCK_FORMAT = 'bridgehead-stock';
export const STOCK_VERSION = 1;
export const LONGEST_STOCK_TEXT = 4_000_000;
