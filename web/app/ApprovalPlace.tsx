import { later } from '../ui/later.tsx';
import { withWords } from '../words/t.ts';
import { useDesign, usePage, useUi } from '../page/page-context.ts';

const ApprovalNote = later(async () => (await withWords(import('../page/ApprovalNote.tsx'), 'work')).ApprovalNote);

/** How the open design stands to its approval; most have none, and nothing is brought for them. */
export function ApprovalPlace() {
  const design = useDesign();
  if (design.approval === undefined) return null;
  return <ApprovalNote design={design} open />;
}

const ApprovalAsk = later(async () => (await withWords(import('./ApprovalAsk.tsx'), 'work')).ApprovalAsk);

/** Where an approval that came by a link is asked about. */
export function ApprovalAskPlace() {
  const { ui } = usePage();
  const asked = useUi((s) => s.approvalAsked);
  return asked && <ApprovalAsk onGiveUp={() => ui.getState().set({ approvalAsked: undefined })} />;
}
