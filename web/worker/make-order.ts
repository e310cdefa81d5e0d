import { strToU8 } from 'fflate';
import { isAllApproved, standingOf } from '../../geometry/approval/standing.ts';
import { findingsText } from '../../geometry/files/findings-file.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlannedPlate } from '../../geometry/files/paper/plate-drawing.ts';
import type { OrderFile, OrderRole } from '../../geometry/order-file/order-file.ts';
import { writeOrderFile } from '../../geometry/order-file/write-order-file.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { MadeFile, Paper } from './plate-api.ts';

/** The design's approval is of something else, or does not prove that it is not: such an order would not be sound. */
export function approvalIsStale(design: Design, book: StockBook): boolean {
  const standing = standingOf(design, fingerprintOf(design, ownRules(design, book)));
  return standing.kind !== 'open' && !isAllApproved(standing);
}

/** The whole order as one ZIP that can be checked. */
export function sealOrder(
  design: Design,
  planned: readonly PlannedPlate[],
  cut: readonly MadeFile[],
  papers: readonly Paper[],
  book: StockBook,
): MadeFile {
  const rules = ownRules(design, book);
  const asOrderFile = (role: OrderRole, { name, bytes }: MadeFile): OrderFile => ({ name, bytes, role });
  const { name, bytes } = writeOrderFile({
    design,
    cut: cut.map((file) => asOrderFile('cut', file)),
    papers: [
      ...papers.map(({ role, file }) => asOrderFile(role, file)),
      { name: 'findings.json', bytes: strToU8(findingsText(design, planned, [])), role: 'findings' },
    ],
    fingerprint: fingerprintOf(design, rules),
    ownRules: rules,
  });
  return { name, type: 'application/zip', bytes: bytes.slice() };
}
