const WHOLE = /^[0-9a-f]{64}$/;
/** As older files and papers carry it. */
const SHORTENED = /^[0-9a-f]{8,63}$/;

/** True when two whole fingerprints (64 hex digits) are of the same cut. What is shortened is the same as nothing. */
export function sameFingerprint(a: string, b: string): boolean {
  return WHOLE.test(a) && a === b;
}

/**
 * True when a shortened fingerprint (8 digits at least) is the beginning of a whole one. That proves nothing, since two
 * designs may share it: whoever asks says "compare by eye", never "approved".
 */
export function beginsAlike(shortened: string, whole: string): boolean {
  return SHORTENED.test(shortened) && WHOLE.test(whole) && whole.startsWith(shortened);
}
