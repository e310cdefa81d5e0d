import { beginWith } from '../../state/actions/begin-with.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { StockBook } from '../../../geometry/stock/stock-book.ts';
import type { Page } from '../../page/page-context.ts';
import { t, withWords } from '../../words/t.ts';
import type { OwnParts } from './approval-back.ts';
import { ANY_LINK } from './limits.ts';

/**
 * Opens the design that the page's address carries, now and whenever the address changes, as one more own design; an
 * approval that comes back is asked about before it is put on the own design it is of. The address is clean afterwards:
 * a reload does not open it again, and nobody hands it on by mistake. A link that cannot be opened stays in the address,
 * and a page of its own says so: no other design is taken for the one that was meant.
 */
export async function openLinks(page: OwnParts & Pick<Page, 'ui'>, book: Promise<StockBook>): Promise<void> {
  window.addEventListener('hashchange', () => void openLink(page, book));
  await openLink(page, book);
}

async function openLink(page: OwnParts & Pick<Page, 'ui'>, book: Promise<StockBook>): Promise<void> {
  const { ui } = page;
  const { hash, pathname, search } = location;
  if (!ANY_LINK.test(hash)) return;
  const refuse = (linkRefused: string): void => ui.getState().set({ linkRefused });
  let read;
  try {
    const { readLink } = await withWords(import('./read-link.ts'), 'work');
    read = readLink(hash);
  } catch {
    // the address keeps the design until it can be read
    refuse(t('link.notLoaded'));
    return;
  }
  if ('problem' in read) {
    refuse(read.problem);
    return;
  }
  history.replaceState(history.state, '', `${pathname}${search}`);
  ui.getState().set({ linkRefused: undefined });
  const { design } = read;
  if (design.approval) {
    const { approvalBack } = await withWords(import('./approval-back.ts'), 'work', 'proof');
    const cameBack = await approvalBack(design, page, await book);
    if (cameBack !== undefined) {
      ui.getState().set({
        approvalAsked: {
          ...cameBack,
          take: async (withOrder) => {
            const notice = await cameBack.take(withOrder);
            ui.getState().set({ ...SHOWN, notice });
          },
          look: () => openAsOwn(design, page),
        },
      });
      return;
    }
  }
  await openAsOwn(design, page);
}

const SHOWN = { selectedId: undefined, litFinding: undefined, plateId: undefined, begin: undefined, byLink: true };

async function openAsOwn(design: Design, { own, ui }: Pick<OwnParts, 'own'> & Pick<Page, 'ui'>): Promise<void> {
  own.begin((before) => beginWith(before, design));
  ui.getState().set({ ...SHOWN, notice: t('link.opened', { title: design.title }) });
  await own.flush();
}
