import { isMissingPart } from '../state/missing-part.ts';

/** Tells when a button's work ended because a part of the page could not be loaded; parts drawn later say so themselves. */
export function watchForMissingParts(tell: () => void): void {
  window.addEventListener('unhandledrejection', ({ reason }: PromiseRejectionEvent) => {
    if (isMissingPart(reason)) tell();
  });
}
