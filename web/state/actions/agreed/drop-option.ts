import { dropOption as dropped } from '../../../../geometry/approval/options.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

export function dropOption(design: Design, id: string): Change {
  return { design: dropped(design, id), undo: 'step' };
}
