import type { TextElement } from '../../design/schema.ts';
import type { Finding, Place, Severity } from '../../findings.ts';
import { labelled, type MendKey, type SaidKey, said } from '../../sentences/say.ts';
import type { WordValues } from '../../sentences/wording.ts';

/** All texts of a design: what is read of them is the same on each of its plates. */
export interface Lettering {
  readonly texts: readonly TextElement[];
  /** Where a text stands on the plate that is looked at. */
  readonly placeOf: (text: TextElement) => Place;
}

/** What is found in one text, or in several; lit up at the first. */
export interface Remark {
  readonly code: string;
  readonly severity: Severity;
  readonly on: readonly [TextElement, ...TextElement[]];
  readonly says: SaidKey;
  readonly values?: WordValues;
  /** The text as one click may write it: only where it is certain what was meant. */
  readonly rewrite?: { readonly label: MendKey; readonly text: string };
}

export function remark({ placeOf }: Lettering, { code, severity, on, says, values, rewrite }: Remark): Finding {
  const [first] = on;
  return {
    code,
    severity,
    place: placeOf(first),
    elementIds: [...new Set(on.map((text) => text.id))],
    ...said(says, values),
    ...(rewrite && {
      mend: {
        ...labelled(rewrite.label),
        change: { kind: 'replace-text', elementId: first.id, text: rewrite.text },
      },
    }),
  };
}

/** A text with what stands from one place to another written otherwise. */
export function spliced(text: string, from: number, to: number, written: string): string {
  return text.slice(0, from) + written + text.slice(to);
}
