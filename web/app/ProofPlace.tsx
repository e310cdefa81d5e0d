import { use, useEffect, useMemo } from 'react';
import { ProofPage } from '../proof/ProofPage.tsx';
import { PageContext, usePage } from '../page/page-context.ts';

/** The page Proof once the shop's own file has been read: who the shop is and what it asks. */
export function ProofPlace() {
  const page = usePage();
  const { shop, trouble } = use(page.wholeShop());
  const { ui } = page;
  useEffect(() => {
    if (trouble) void Promise.resolve(trouble()).then((notice) => ui.getState().set({ notice }));
  }, [trouble, ui]);
  const value = useMemo(() => (shop ? { ...page, shop } : page), [page, shop]);
  return (
    <PageContext value={value}>
      <ProofPage />
    </PageContext>
  );
}
