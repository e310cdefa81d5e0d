/**
 * Patterns over letters, marks and numbers that cost next to nothing to build.
 *
 * An engine takes half to a whole millisecond to build a class such as \p{L}, and drops what it built whenever it tidies
 * its memory: a keystroke then built forty of them. Most texts hold nothing but Western signs. For these the same
 * pattern is written out with the few letters there are, which means the same and is built in a twentieth of the time.
 */

/** A pattern for one text: which of the two it gets follows from the text alone. Without a place of its own to go on. */
export type WrittenForm = (text: string) => RegExp;

/**
 * In: a pattern as in a literal with the flag u, with \p{...} only as listed in WESTERN, no `.` and no \u{...}; flags
 * without u; capitals or small letters not with i, which knows none. Out: what gives the pattern for a text.
 * Throws RangeError for another class.
 */
export function writtenForm(source: string, flags = ''): WrittenForm {
  let western: RegExp | undefined;
  let full: RegExp | undefined;
  return (text) =>
    isWestern(text) ? (western ??= new RegExp(inWestern(source), flags)) : (full ??= new RegExp(source, `${flags}u`));
}

/** True of a text of Latin-1 signs, general punctuation and the euro sign only. */
export function isWestern(text: string): boolean {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code > 0xff && !(code >= 0x2010 && code <= 0x2027) && !(code >= 0x2030 && code <= 0x205e) && code !== 0x20ac) {
      return false;
    }
  }
  return true;
}

/** The Unicode classes as far as they go in a Western text. */
const WESTERN: Readonly<Record<string, string>> = {
  L: 'A-Za-z\\xaa\\xb5\\xba\\xc0-\\xd6\\xd8-\\xf6\\xf8-\\xff',
  Lu: 'A-Z\\xc0-\\xd6\\xd8-\\xde',
  Ll: 'a-z\\xb5\\xdf-\\xf6\\xf8-\\xff',
  M: '',
  N: '0-9\\xb2\\xb3\\xb9\\xbc-\\xbe',
  Cc: '\\x00-\\x1f\\x7f-\\x9f',
  Cf: '\\xad',
  Variation_Selector: '',
  'Script=Latin': 'A-Za-z\\xaa\\xba\\xc0-\\xd6\\xd8-\\xf6\\xf8-\\xff',
  'Script=Arabic': '',
  'Script=Hebrew': '',
  'Script=Syriac': '',
  'Script=Devanagari': '',
  'Script=Bengali': '',
  Emoji_Presentation: '',
};

/** Every class written out; one that stands outside of brackets gets its own. */
function inWestern(source: string): string {
  let inBrackets = false;
  return source.replace(/\\p\{([^}]*)\}|\\[^]|[[\]]/g, (part, name: string | undefined) => {
    if (part === '[') inBrackets = true;
    if (part === ']') inBrackets = false;
    if (name === undefined) return part;
    const inside = WESTERN[name];
    if (inside === undefined) throw new RangeError(`there is no Western form of ${part}`);
    return inBrackets ? inside : `[${inside}]`;
  });
}
