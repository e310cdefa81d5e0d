import { emptyDesign } from '../../../geometry/design/defaults.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { beginWith } from '../../state/actions/begin-with.ts';
import { t } from '../../words/t.ts';
import { SAMPLES } from './samples.ts';
import { READY_MADE, type Beginning } from './beginnings.ts';

const FIRST = new WeakSet<Design>();

/** What lies on the stage at the first visit: the first beginning, on a head that nobody has measured yet. */
export function firstDesign(): Design {
  const [first] = READY_MADE;
  if (first === undefined) return emptyDesign();
  const beginnings = READY_MADE.map(({ design }) => design);
  const { beginning: _, ...shown } = beginWith(first.design, begun(first), beginnings).design;
  FIRST.add(shown);
  return shown;
}

/** Nobody chose it: it lies there until something is. */
export function isFirstDesign(design: Design): boolean {
  return FIRST.has(design);
}

/** A beginning as it is begun: called what its card says, its samples in the person's language. */
export function begun({ id, design }: Beginning): Design {
  const samples = Object.entries(SAMPLES[id]);
  const elements = design.elements.map((e) => {
    const key = samples.find(([element]) => element === e.id)?.[1];
    return key !== undefined && isText(e) ? { ...e, text: t(`begin.samples.${key}`) } : e;
  });
  return { ...design, elements, title: t(`begin.kinds.${id}`), beginning: id };
}
