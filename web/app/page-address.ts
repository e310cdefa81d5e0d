import type { PageName, UiStore } from '../state/ui-store.ts';

/** Which page the address asks for, of those offered: `?page=proof`, `?page=cut`, or the first. */
function pageAsked(ui: UiStore): PageName {
  const asked = new URLSearchParams(location.search).get('page');
  const { pages } = ui.getState();
  return pages.find((page) => page === asked) ?? pages[0] ?? 'design';
}

/** Keeps the page in the address: loading anew stays, and the browser's way back leads back. */
export function keepPageInAddress(ui: UiStore): void {
  ui.getState().set({ page: pageAsked(ui) });
  addEventListener('popstate', () => {
    if (pageAsked(ui) !== ui.getState().page) ui.getState().set({ page: pageAsked(ui) });
  });
  ui.subscribe(({ page }, before) => {
    // A page that is not offered is not opened by anything else either.
    if (!ui.getState().pages.includes(page)) ui.getState().set({ page: pageAsked(ui) });
    else if (page !== before.page && page !== pageAsked(ui)) history.pushState(null, '', addressOf(page));
  });
}

/** What is in the fragment stays. */
function addressOf(page: PageName): string {
  const url = new URL(location.href);
  if (page === 'design') url.searchParams.delete('page');
  else url.searchParams.set('page', page);
  return url.href;
}
