import { lazy, Suspense } from 'react';
import { useUi } from './page-context.ts';

const MyDesigns = lazy(async () => ({ default: (await import('../panels/MyDesigns.tsx')).MyDesigns }));

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
