/** What browsers say when an imported file cannot be had: Chromium, Firefox, Safari; last, the bundler of its style sheets. */
const NOT_HAD =
  /dynamically imported module|Importing a module script failed|error loading dynamically|Unable to preload CSS/i;

/** A part of the page that is imported when it is needed could not be loaded: the network, or a newer build. */
export function isMissingPart(fault: unknown): boolean {
  return fault instanceof Error && NOT_HAD.test(fault.message);
}
