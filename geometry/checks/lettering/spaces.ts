import type { Finding } from '../../findings.ts';
import { shortText } from '../../sentences/shorten.ts';
import { type Lettering, remark } from './lettering.ts';

/**
 * Blanks before or after a text, or several together: a note, since wide gaps are sometimes meant. A text that closes
 * round its ring ends in a blank rightly; one of nothing but blanks is empty, which its layout says.
 */
export function checkSpaces(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) => {
    const closed = on.kind === 'ringText' && on.fit !== 'natural' && on.fit.spanDeg === 360;
    const single = on.text.replace(/\s{2,}/gu, (blanks) => (blanks.includes('\n') ? '\n' : ' '));
    const tidy = closed ? single : single.trim();
    if (tidy === on.text || tidy.trim() === '') return [];
    return [
      remark(lettering, {
        code: 'stray-spaces',
        severity: 'note',
        on: [on],
        says: single === on.text ? 'lettering.spacesAtEnds' : 'lettering.spacesDoubled',
        values: { text: shortText(on.text) },
        rewrite: { label: 'mends.spacesOut', text: tidy },
      }),
    ];
  });
}
