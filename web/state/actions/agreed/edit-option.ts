import { editOption as edited, type OptionPart } from '../../../../geometry/approval/options.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Sets name, stock, faces or plates of an option; a part that is undefined is as the design has it. */
export function editOption(design: Design, id: string, part: OptionPart): Change {
  const typed = Object.keys(part).join() === 'name';
  return { design: edited(design, id, part), undo: typed ? 'merge' : 'step', about: `option:${id}:name` };
}
