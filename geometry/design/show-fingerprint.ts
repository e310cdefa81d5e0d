/**
 * How a fingerprint is shown. Eight digits are too few: two designs that share them are found in seconds. A pair that
 * shares sixteen takes some 2^32 tries (half the length counts: NIST SP 800-107r1, section 4.1, from memory).
 * Machines never compare what is shown, but all 64 digits (geometry/approval/same-fingerprint.ts).
 */
const SHOWN_DIGITS = 16;

/** `a1b2 c3d4 e5f6 0718`: the first 16 digits in groups of four; of a shorter one as many as there are. */
export function showFingerprint(fingerprint: string): string {
  return (printInName(fingerprint).match(/.{1,4}/gsu) ?? []).join(' ');
}

/** The same without blanks, as file names carry it. */
export function printInName(fingerprint: string): string {
  return fingerprint.slice(0, SHOWN_DIGITS);
}
