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

/** An approval that came back, and whose own design it is of. Nothing is changed until somebody takes it. */
export interface CameBack {
  /** Who approved, by what the link says. */
  readonly name: string;
  /** When, ISO 8601. */
  readonly at: string;
  /** The own design it is of. */
  readonly title: string;
  /** The design was changed since it was approved. */
  readonly changedSince: boolean;
  /** Opens the own design, puts the approval on it, and says what happened. */
  readonly take: () => Promise<string>;
}

/**
 * Finds the own design that an approval, come by a link, is of. The person is to be asked: anybody can write a link.
 * undefined where that design is not in this browser, or the link carries no approval. A design changed after it was
 * approved gives undefined too: it is to be looked at, never taken for what was approved.
 */
export async function approvalBack(from: Design, page: OwnParts, book: StockBook): Promise<CameBack | undefined> {
  const { approval } = from;
  const approved = printOf(from, book);
  if (!approval || standingOf(from, approved).kind !== 'approved') return undefined;
  const found = await findTheOne(approved, page, book);
  if (!found) return undefined;
  const { name, at } = approval;
  return {
    name,
    at,
    title: found.design.title,
    changedSince: wasApprovedAs(found.design, printOf(found.design, book), approved) !== 'now',
    async take() {
      if (!(await found.open())) return t('keep.gone');
      const { history } = page.design.getState();
      const print = printOf(history.present, book);
      const when = wasApprovedAs(history.present, print, approved);
      if (when === undefined) return t('keep.gone');
      page.design.getState().apply(takeApproval(history.present, from, print));
      await page.own.flush();
      const values = { name, title: history.present.title };
      return t(when === 'now' ? 'proof.send.cameBack' : 'proof.send.cameBackOther', values);
    },
  };
}

interface Found {
  readonly design: Design;
  readonly open: () => Promise<boolean>;
}

/** The own design that was approved: the one open already, else the newest. */
async function findTheOne(
  approved: string,
  { own, list, design, saving }: OwnParts,
  book: StockBook,
): Promise<Found | undefined> {
  const isIt = (d: Design): boolean => wasApprovedAs(d, printOf(d, book), approved) !== undefined;
  const found = (id: string, design: Design): Found => ({
    design,
    open: async () => saving.getState().openId === id || (await own.open(id)) === undefined,
  });
  const { openId } = saving.getState();
  const open = design.getState().history.present;
  // a beginning that nobody touched is nobody's design
  if (openId !== undefined && isIt(open)) return found(openId, open);
  await list.refresh();
  for (const card of saving.getState().cards ?? []) {
    if (card.damaged || card.binnedMs !== undefined) continue;
    const read = await readOwn(list, card.id);
    if (read && 'design' in read && isIt(read.design)) return found(card.id, read.design);
  }
  return undefined;
}

function printOf(design: Design, book: StockBook): string {
  return fingerprintOf(design, ownRules(design, book));
}
