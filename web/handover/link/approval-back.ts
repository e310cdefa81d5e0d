import { standingOf } from '../../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import { readOwn } from '../../state/own/read-own.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { ownRules } from '../../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../../geometry/stock/stock-book.ts';
import { takeApproval, wasApprovedAs } from '../../state/actions/agreed/take-approval.ts';
import type { Page } from '../../page/page-context.ts';
import { t } from '../../words/t.ts';

/** The parts of the page that know the own designs. */
export type OwnParts = Pick<Page, 'own' | 'list' | 'design' | 'saving'>;

/**
 * Puts the approval that came by a link on the own design that was approved. Gives a sentence that says so; undefined
 * where that design is not in this browser, or the link carries no approval. A design changed after it was approved
 * gives undefined too: it is to be looked at, never taken for what was approved.
 */
export async function approvalBack(from: Design, page: OwnParts, book: StockBook): Promise<string | undefined> {
  const { approval } = from;
  const approved = printOf(from, book);
  if (!approval || standingOf(from, approved).kind !== 'approved') return undefined;
  if (!(await openTheOne(approved, page, book))) return undefined;
  const { history } = page.design.getState();
  const print = printOf(history.present, book);
  const when = wasApprovedAs(history.present, print, approved);
  page.design.getState().apply(takeApproval(history.present, from, print));
  await page.own.flush();
  const values = { name: approval.name, title: history.present.title };
  return t(when === 'now' ? 'proof.send.cameBack' : 'proof.send.cameBackOther', values);
}

/** Opens the own design that was approved: the one open already, else the newest. */
async function openTheOne(
  approved: string,
  { own, list, design, saving }: OwnParts,
  book: StockBook,
): Promise<boolean> {
  const isIt = (d: Design): boolean => wasApprovedAs(d, printOf(d, book), approved) !== undefined;
  // a beginning that nobody touched is nobody's design
  if (saving.getState().openId !== undefined && isIt(design.getState().history.present)) return true;
  await list.refresh();
  for (const card of saving.getState().cards ?? []) {
    if (card.damaged || card.binnedMs !== undefined) continue;
    const read = await readOwn(list, card.id);
    if (read && 'design' in read && isIt(read.design)) return (await own.open(card.id)) === undefined;
  }
  return false;
}

function printOf(design: Design, book: StockBook): string {
  return fingerprintOf(design, ownRules(design, book));
}
