import type { Finding } from '../../findings.ts';
import { shortText } from '../../sentences/shorten.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark } from './lettering.ts';

/** Zero width space, joiners, marks of direction, soft hyphen, byte order mark: \p{Cf}, but for tags of emoji flags. */
const INVISIBLE = /[\u00ad\u034f\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u206f\ufeff]/g;
/** Scripts in which joiners and marks of direction do their work. */
const JOINING = writtenForm(
  '[\\p{Script=Arabic}\\p{Script=Hebrew}\\p{Script=Syriac}\\p{Script=Devanagari}\\p{Script=Bengali}\\p{Emoji_Presentation}]',
);
/** A blank that does not break is right where French sets one, and between a number and its sign. */
const FIXED_BLANK = writtenForm('(?<![«\\d\\p{Lu}.º°])[\\u00a0\\u202f](?![»:;!?%€\\d])', 'g');

/** Signs that cannot be seen and come in with a text copied from elsewhere: a note, since none of them is cut. */
export function checkInvisibleSigns(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) => {
    if (JOINING(on.text).test(on.text)) return [];
    const tidy = on.text.replace(INVISIBLE, '').replace(FIXED_BLANK(on.text), ' ');
    if (tidy === on.text || tidy.trim() === '') return [];
    return [
      remark(lettering, {
        code: 'invisible-signs',
        severity: 'note',
        on: [on],
        says: 'lettering.invisible',
        values: { text: shortText(tidy) },
        rewrite: { label: 'mends.signsOut', text: tidy },
      }),
    ];
  });
}
