import { addOption as added, type OptionPart } from '../../../../geometry/approval/options.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** One option more to choose from (whyNoOption says why there cannot be another). */
export function addOption(design: Design, part: OptionPart): Change {
  return { design: added(design, part), undo: 'step' };
}
