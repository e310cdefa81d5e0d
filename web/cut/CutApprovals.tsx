import { ApprovalNote } from '../page/ApprovalNote.tsx';
import { useCut } from './state/cut-context.ts';

/** How each design of the order stands to its approval, as it was taken. */
export function CutApprovals() {
  const items = useCut((s) => s.items);
  return items.map(({ key, design }) => <ApprovalNote key={key} design={design} title={design.title} />);
}
