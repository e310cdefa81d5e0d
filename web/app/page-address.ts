import { PAGES, type PageName, type UiStore } from '../state/ui-store.ts';

/** Which page the address asks for: `?page=proof`, `?page=cut`, or the design. */
function pageAsked(): PageName {
  const asked = new URLSearchParams(location.search).get('page');
  return PAGES.find((page) => page === asked) ?? 'design';
}

/** Keeps the page in the address: loading anew stays, and the browser's way back leads back. */
export function keepPageInAddress(ui: UiStore): void {
  ui.getState().set({ page: pageAsked() });
  addEventListener('popstate', () => {
    if (pageAsked() !== ui.getState().page) ui.getState().set({ page: pageAsked() });
  });
  ui.subscribe(({ page }, before) => {
    if (page !== before.page && page !== pageAsked()) history.pushState(null, '', addressOf(page));
  });
}

/** What is in the fragment stays. */
function addressOf(page: PageName): string {
  const url = new URL(location.href);
  if (page === 'design') url.searchParams.delete('page');
  else url.searchParams.set('page', page);
  return url.href;
}
