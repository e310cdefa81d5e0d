export const book = {};
