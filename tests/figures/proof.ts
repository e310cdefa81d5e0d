import type { Claim } from './claim.ts';
import { APPROVAL_CLAIMS } from './proof/approval.ts';
import { ORDER_CLAIMS } from './proof/order.ts';
import { PDF_CLAIMS } from './proof/pdf.ts';
import { SHOP_CLAIMS } from './proof/shop.ts';

/** What goes between customer and shop: the shop with its price, what an approval binds, the order in one file, and its papers. */
export const claims: readonly Claim[] = [...SHOP_CLAIMS, ...APPROVAL_CLAIMS, ...ORDER_CLAIMS, ...PDF_CLAIMS];
