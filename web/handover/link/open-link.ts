import { beginWith } from '../../state/actions/begin-with.ts';
import type { StockBook } from '../../../geometry/stock/stock-book.ts';
import type { Page } from '../../page/page-context.ts';
import { t, withWords } from '../../words/t.ts';
import type { OwnParts } from './approval-back.ts';
import { ANY_LINK } from './limits.ts';

/**
 * Opens the design that the page's address carries, now and whenever the address changes, as one more own design; an
 * approval that comes back is put on the own design it is of. The address is clean afterwards: a reload does not open it
 * again, and nobody hands it on by mistake.
 */
export async function openLinks(page: OwnParts & Pick<Page, 'ui'>, book: Promise<StockBook>): Promise<void> {
  window.addEventListener('hashchange', () => void openLink(page, book));
  await openLink(page, book);
}

async function openLink(page: OwnParts & Pick<Page, 'ui'>, book: Promise<StockBook>): Promise<void> {
  const { own, ui } = page;
  const { hash, pathname, search } = location;
  if (!ANY_LINK.test(hash)) return;
  let read;
  try {
    const { readLink } = await withWords(import('./read-link.ts'), 'work');
    read = readLink(hash);
  } catch {
    // the address keeps the design until it can be read
    ui.getState().set({ notice: t('link.notLoaded') });
    return;
  }
  history.replaceState(history.state, '', `${pathname}${search}`);
  if ('problem' in read) {
    ui.getState().set({ notice: read.problem });
    return;
  }
  const { design } = read;
  const shown = { selectedId: undefined, litFinding: undefined, plateId: undefined, begin: undefined, byLink: true };
  if (design.approval) {
    const { approvalBack } = await withWords(import('./approval-back.ts'), 'work', 'proof');
    const cameBack = await approvalBack(design, page, await book);
    if (cameBack !== undefined) {
      ui.getState().set({ ...shown, notice: cameBack });
      return;
    }
  }
  own.begin((before) => beginWith(before, design));
  ui.getState().set({ ...shown, notice: t('link.opened', { title: design.title }) });
  await own.flush();
}
