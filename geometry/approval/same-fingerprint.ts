/** At least as many digits as proofs and files show. */
const SOUND = /^[0-9a-f]{8,64}$/;

/**
 * True when two fingerprints, whole (64 hex digits) or shortened, are of the same cut: one begins with the other.
 * What is empty, shorter than 8 digits or no hex number is no fingerprint and is the same as nothing.
 */
export function sameFingerprint(a: string, b: string): boolean {
  if (!SOUND.test(a) || !SOUND.test(b)) return false;
  return a.length <= b.length ? b.startsWith(a) : a.startsWith(b);
}
