import type { Design } from '../../../geometry/design/schema.ts';
import { LONGEST_TITLE } from '../../state/actions/agreed/set-title.ts';
import { t } from '../../words/t.ts';

/** The design of an unsound order, marked by its title, which is on every paper; nobody approved this copy. */
export function onlyToLookAt(design: Design): Design {
  const { approval: _approval, accepted: _accepted, revisions: _revisions, ...rest } = design;
  const room = LONGEST_TITLE - t('handOver.lookTitle', { title: '' }).length;
  return { ...rest, title: t('handOver.lookTitle', { title: [...rest.title].slice(0, room).join('') }) };
}
