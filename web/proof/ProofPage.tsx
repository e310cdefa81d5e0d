/**
 * Page Proof (`?page=proof`) comes when it is opened, with words of its own.
 *
 * - All that is agreed on stands in the design (geometry/approval/). The page's own store keeps what is looked at, and
 *   plates that were planned by what they are cut of: a changed quantity or name plans nothing again.
 * - state/proof-work.ts asks the plate worker for one plate after another. The newest wish wins, and it waits until the
 *   page's own plates are made. worker/plan-made.ts gives length, openings and both pictures from the proven cut plan,
 *   worker/differ.ts what is cut differently.
 * - Prices are `quoteOf` of those plates; the internal cost is never asked.
 * - A link opened lands where something is to be done (`byLink`). An approval that comes back is
 *   put on the own design of that fingerprint. Where what the link carries was changed since, it is opened as one more.
 */

import { useEffect } from 'react';
import { standingOf } from '../../geometry/approval/standing.ts';
import '../page/semibold.css';
import { Notice } from '../page/Notice.tsx';
import { useDesign, usePage, useUi } from '../page/page-context.ts';
import layout from '../ui/layout.module.css';
import { Steps } from '../ui/Steps.tsx';
import { t } from '../words/t.ts';
import { ApprovePart } from './approve/ApprovePart.tsx';
import { OrderChangedNote } from './revisions/OrderChangedNote.tsx';
import { ChangedNote } from './revisions/ChangedNote.tsx';
import { OptionsPart } from './options/OptionsPart.tsx';
import { PapersPart } from './papers/PapersPart.tsx';
import { ProofContext, proofOf, useProof, useProofParts } from './state/proof-context.ts';
import css from './ProofPage.module.css';
import { PROOF_PARTS, type ProofPart } from './state/proof-store.ts';
import { RevisionsPart } from './revisions/RevisionsPart.tsx';
import { StandingLine } from './StandingLine.tsx';
import { useFingerprint } from './state/use-designs.ts';

const PARTS: Record<ProofPart, () => React.ReactNode> = {
  options: OptionsPart,
  approve: ApprovePart,
  revisions: RevisionsPart,
  papers: PapersPart,
};

/** For sales and customer: what there is to choose from, the price, the approval, what it was before, and the papers. */
export function ProofPage() {
  const page = usePage();
  return (
    <ProofContext value={proofOf(page)}>
      <Desk />
    </ProofContext>
  );
}

function Desk() {
  const { ui } = usePage();
  const { store } = useProofParts();
  const design = useDesign();
  const part = useProof((s) => s.part);
  const byLink = useUi((s) => s.byLink);
  const standing = standingOf(design, useFingerprint());
  // whoever came by a link came to say yes; where there is something to choose, that comes first
  useEffect(() => {
    if (!byLink) return;
    ui.getState().set({ byLink: false });
    const chosen = design.approval !== undefined || (design.options ?? []).length === 0;
    store.getState().set({ part: chosen ? 'approve' : 'options' });
  }, [byLink, design, store, ui]);
  const Part = PARTS[part];
  return (
    <main id="stage" className={css.main} tabIndex={-1} aria-label={t('proof.title')}>
      {standing.kind === 'changed' && <ChangedNote standing={standing} part={part} />}
      {standing.kind === 'approved' && standing.order.kind === 'changed' && <OrderChangedNote order={standing.order} />}
      <div className={css.head}>
        <Steps
          narrow
          className={css.nav}
          label={t('proof.nav')}
          now={part}
          steps={PROOF_PARTS.map((value) => ({ value, face: t(`proof.parts.${value}`) }))}
          onGo={(to) => store.getState().set({ part: to })}
        />
        <StandingLine standing={standing} />
      </div>
      <div key={part} className={`${layout.scrolled} ${css.part}`}>
        <Part />
        <Notice />
      </div>
    </main>
  );
}
