import { canonicalJson } from '../../../geometry/design/canonical-json.ts';
import { emptyDesign } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Change } from '../change.ts';
import { t } from '../../words/t.ts';

/** What belongs to the person's barrel, not to the lettering. */
const THEIRS = ['head', 'plates', 'stock'] as const;

/**
 * Takes another design in place of this one (a beginning, an opened file); undo brings the old one back. A beginning
 * brings lettering, not a barrel: given all beginnings, what is none of theirs was said by the person and stays; the
 * rest is as in a new design, so that a head nobody measured is told to be measured. Who ordered, notes and quantities
 * never stay: the next order may be somebody else's.
 */
export function beginWith(before: Design, design: Design, beginnings: readonly Design[] = []): Change {
  if (beginnings.length === 0) return { design, undo: 'step' };
  const fresh = spokenAs(emptyDesign());
  const kept = Object.fromEntries(
    THEIRS.map((part) => {
      const own = canonicalJson(before[part]);
      const theirs = [...beginnings, fresh].every((b) => canonicalJson(b[part]) !== own);
      return [part, theirs ? before[part] : fresh[part]];
    }),
  );
  const begun = { ...design, ...kept, order: fresh.order };
  return { design: { ...begun, plates: begun.plates.map((p) => ({ ...p, quantity: 1 })) }, undo: 'step' };
}

/** A new design has one plate, called in the language spoken: more of them are ordered only by who wants them. */
function spokenAs(fresh: Design): Design {
  const plates = fresh.plates.filter(({ id }) => id === 'large');
  return { ...fresh, plates: plates.map((p) => ({ ...p, name: t('page.plates.large') })) };
}
