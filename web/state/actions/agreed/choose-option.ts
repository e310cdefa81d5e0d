import { chooseOption as chosen } from '../../../../geometry/approval/options.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** An option becomes the design itself; the design as it was becomes an option, under formerName. */
export function chooseOption(design: Design, id: string, formerName: string): Change {
  return { design: chosen(design, id, formerName), undo: 'step' };
}
