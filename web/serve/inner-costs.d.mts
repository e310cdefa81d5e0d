export function innerCostsIn(path: '/stock.json' | '/shop.json', text: string): boolean;
