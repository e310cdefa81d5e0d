import type { Claim } from './claim.ts';
import { ORDER_CLAIMS } from './proof/order.ts';
import { SHOP_CLAIMS } from './proof/shop.ts';

/** What goes between customer and shop: the shop with its price, and the order in one file. */
export const claims: readonly Claim[] = [...SHOP_CLAIMS, ...ORDER_CLAIMS];
