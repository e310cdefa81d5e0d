import { lazy, Suspense } from 'react';
import { withWords } from '../words/t.ts';
import { useUi } from '../page/page-context.ts';

const MyDesigns = lazy(async () => ({
  default: (await withWords(import('../page/my-designs/MyDesigns.tsx'), 'work')).MyDesigns,
}));

/** The list of own designs, loaded when it is first asked for. */
export function MyDesignsPlace() {
  const open = useUi((s) => s.designsOpen);
  return (
    open && (
      <Suspense>
        <MyDesigns />
      </Suspense>
    )
  );
}
