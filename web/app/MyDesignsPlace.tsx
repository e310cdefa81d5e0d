import { later } from '../ui/later.tsx';
import { withWords } from '../words/t.ts';
import { usePage, useUi } from '../page/page-context.ts';

const MyDesigns = later(async () => (await withWords(import('../page/my-designs/MyDesigns.tsx'), 'work')).MyDesigns);

/** The list of own designs, loaded when it is first asked for. */
export function MyDesignsPlace() {
  const { ui } = usePage();
  const open = useUi((s) => s.designsOpen);
  return open && <MyDesigns onGiveUp={() => ui.getState().set({ designsOpen: false })} />;
}
