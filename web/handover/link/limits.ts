/** What the fragment of an address begins with when it carries a design; the number is the form of packing. */
export const LINK_MARK = '#d1.';

/** Any link of ours, later forms and those cut short included. */
export const ANY_LINK = /^#d\d{1,3}(\.|$)/;

/** RFC 9110 section 4.1 asks everybody to take addresses of 8,000 octets; longer ones get lost on the way. */
export const LONGEST_LINK = 8000;

/** A design without drawings is far below this; a link that unpacks to more is refused while it unpacks. */
export const MOST_UNPACKED_BYTES = 256 * 1024;
