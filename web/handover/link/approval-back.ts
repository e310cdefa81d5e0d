import { withOffer } from '../../../geometry/approval/offer.ts';
import { chooseOption, optionDesigns } from '../../../geometry/approval/options.ts';
import { keepRevision } from '../../../geometry/approval/revisions.ts';
import { sameFingerprint } from '../../../geometry/approval/same-fingerprint.ts';
import { standingOf } from '../../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import { readOwn } from '../../state/own/read-own.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Wording } from '../../../geometry/sentences/wording.ts';
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
  /** One of the options to choose from was approved: it becomes the design. */
  readonly option: string | undefined;
  /** In what the own order is not what was approved: taken over only if the person says so. */
  readonly orderBy: readonly Wording[];
  /** Opens the own design, puts the approval on it, with its order or without, and says what happened. */
  readonly take: (withOrder: boolean) => Promise<string>;
}

/**
 * Finds the own design that an approval, come by a link, is of: the one it was handed on from, by whatever name, else
 * one that cuts the same. The person is to be asked: anybody can write a link. undefined where that design is not in
 * this browser, or the link carries no approval. A design changed after it was approved gives undefined too: it is to be
 * looked at, never taken for what was approved.
 */
export async function approvalBack(from: Design, page: OwnParts, book: StockBook): Promise<CameBack | undefined> {
  const { approval } = from;
  const approved = printOf(from, book);
  if (!approval || standingOf(from, approved).kind !== 'approved') return undefined;
  const found = await findTheOne(from, approved, page, book);
  if (!found) return undefined;
  const { name, at } = approval;
  const asTaken = taken(found.design, from, approved, book);
  if (!asTaken) return undefined;
  const standing = standingOf(asTaken.design, printOf(asTaken.design, book));
  return {
    name,
    at,
    title: found.design.title,
    changedSince: asTaken.when === 'before',
    option: asTaken.option,
    orderBy:
      asTaken.when !== 'before' && standing.kind !== 'open' && standing.order.kind === 'changed'
        ? standing.order.by
        : [],
    async take(withOrder) {
      if (!(await found.open())) return t('keep.gone');
      // another tab may have it open: the approval belongs on the design itself, not on a copy
      if (page.saving.getState().tab !== 'mine') await page.own.takeOver();
      const now = taken(page.design.getState().history.present, from, approved, book);
      if (!now) return t('keep.gone');
      const { offer } = approval;
      const design = withOrder && offer ? withOffer(now.design, offer) : now.design;
      page.design.getState().apply({ design, undo: 'step' });
      await page.own.flush();
      const values = { name, title: design.title };
      return t(now.when === 'before' ? 'proof.send.cameBackOther' : 'proof.send.cameBack', values);
    },
  };
}

interface Taken {
  readonly design: Design;
  readonly when: 'now' | 'before';
  /** Name of the option that became the design. */
  readonly option: string | undefined;
}

/** The own design with the approval on it, and an option that was approved in its place; undefined: it is of another. */
function taken(own: Design, from: Design, approved: string, book: StockBook): Taken | undefined {
  const print = printOf(own, book);
  const when = wasApprovedAs(own, print, approved);
  const option =
    when === 'now' ? undefined : optionDesigns(own).find((o) => sameFingerprint(printOf(o.design, book), approved));
  if (option && from.approval) {
    const kept = keepRevision(own, { at: from.approval.at, why: t('proof.options.former'), fingerprint: print });
    const chosen = chooseOption(kept, option.id, t('proof.options.former'));
    const { design } = takeApproval(chosen, from, approved);
    return { design, when: 'now', option: option.name || t('proof.options.unnamed') };
  }
  return when && { design: takeApproval(own, from, print).design, when, option: undefined };
}

interface Found {
  readonly design: Design;
  readonly open: () => Promise<boolean>;
}

/** The own design that it was handed on from; else one that was approved: the one open already, else the newest. */
async function findTheOne(
  from: Design,
  approved: string,
  { own, list, design, saving }: OwnParts,
  book: StockBook,
): Promise<Found | undefined> {
  const isIt = (d: Design): boolean => taken(d, from, approved, book) !== undefined;
  const isHome = (id: string, d: Design): boolean =>
    from.home === undefined || from.home === id || from.home === d.home;
  const found = (id: string, design: Design): Found => ({
    design,
    open: async () => saving.getState().openId === id || (await own.open(id)) === undefined,
  });
  const { openId } = saving.getState();
  const open = design.getState().history.present;
  // a beginning that nobody touched is nobody's design
  let alike = openId !== undefined && isIt(open) ? found(openId, open) : undefined;
  if (alike && openId !== undefined && isHome(openId, open)) return alike;
  await list.refresh();
  for (const card of saving.getState().cards ?? []) {
    if (card.damaged || card.binnedMs !== undefined) continue;
    const read = await readOwn(list, card.id);
    if (!read || !('design' in read) || !isIt(read.design)) continue;
    const one = found(card.id, read.design);
    if (isHome(card.id, read.design)) return one;
    alike ??= one;
  }
  return alike;
}

function printOf(design: Design, book: StockBook): string {
  return fingerprintOf(design, ownRules(design, book));
}
