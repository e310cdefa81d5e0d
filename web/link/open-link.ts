import { beginWith } from '../actions/begin-with.ts';
import type { OwnDesigns } from '../state/own/own-designs.ts';
import type { UiStore } from '../state/ui-store.ts';
import { t, withWords } from '../words/t.ts';
import { ANY_LINK } from './limits.ts';

/**
 * Opens the design that the page's address carries, now and whenever the address changes, as one more own design.
 * The address is clean afterwards: a reload does not open it again, and nobody hands it on by mistake.
 */
export async function openLinks(own: OwnDesigns, ui: UiStore): Promise<void> {
  window.addEventListener('hashchange', () => void openLink(own, ui));
  await openLink(own, ui);
}

async function openLink(own: OwnDesigns, ui: UiStore): Promise<void> {
  const { hash, pathname, search } = location;
  if (!ANY_LINK.test(hash)) return;
  history.replaceState(history.state, '', `${pathname}${search}`);
  const { readLink } = await withWords(import('./read-link.ts'), 'work');
  const read = readLink(hash);
  if ('problem' in read) {
    ui.getState().set({ notice: read.problem });
    return;
  }
  const { design } = read;
  own.begin((before) => beginWith(before, design));
  ui.getState().set({
    selectedId: undefined,
    litFinding: undefined,
    plateId: undefined,
    begin: undefined,
    byLink: true,
    notice: t('link.opened', { title: design.title }),
  });
  await own.flush();
}
