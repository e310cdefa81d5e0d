import type { Claim } from './claim.ts';
import { ORDER_CLAIMS } from './proof/order.ts';

/** What goes between customer and shop: the order in one file. */
export const claims: readonly Claim[] = [...ORDER_CLAIMS];
