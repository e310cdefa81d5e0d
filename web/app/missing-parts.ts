/** What browsers say when an imported file cannot be had: Chromium, Firefox, Safari; last, the bundler of its style sheets. */
const NOT_HAD =
  /dynamically imported module|Importing a module script failed|error loading dynamically|Unable to preload CSS/i;

/** Tells when a button's work ended because a part of the page could not be loaded; parts drawn later say so themselves. */
export function watchForMissingParts(tell: () => void): void {
  window.addEventListener('unhandledrejection', ({ reason }: PromiseRejectionEvent) => {
    if (reason instanceof Error && NOT_HAD.test(reason.message)) tell();
  });
}
