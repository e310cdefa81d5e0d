import { emptyDesign } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { beginWith } from '../../state/actions/begin-with.ts';
import { t } from '../../words/t.ts';
import { READY_MADE, type Beginning } from './beginnings.ts';

/** What lies on the stage at the first visit: the first beginning, on a head that nobody has measured yet. */
export function firstDesign(): Design {
  const [first] = READY_MADE;
  if (first === undefined) return emptyDesign();
  const beginnings = READY_MADE.map(({ design }) => design);
  return beginWith(first.design, titled(first), beginnings).design;
}

/** A beginning is called what its card says, in the person's language. */
export function titled({ id, design }: Beginning): Design {
  return { ...design, title: t(`begin.kinds.${id}`) };
}
