import { useEffect, useMemo } from 'react';
import { optionDesigns, type OptionDesign } from '../../../geometry/approval/options.ts';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { ownRules } from '../../../geometry/stock/own-rules.ts';
import { useDesign, usePage } from '../../page/page-context.ts';
import { plateKeys } from '../../handover/price/plate-key.ts';
import { plannedOf, type PlannedDesign } from './planned-design.ts';
import { useProof, useProofParts } from './proof-context.ts';

/** The design and its options; the same records as long as nothing of them changes. */
export function useOptions(): readonly OptionDesign[] {
  const design = useDesign();
  return useMemo(() => optionDesigns(design), [design]);
}

/** The whole fingerprint of the design as it is, by the shop's rules. */
export function useFingerprint(): string {
  const design = useDesign();
  const { book } = usePage();
  return useMemo(() => fingerprintOf(design, ownRules(design, book)), [design, book]);
}

/** Every plate of a design with its cut plan, called and counted as the design says. */
export function usePlanned(design: Design): PlannedDesign {
  const planned = useProof((s) => s.planned);
  return useMemo(() => plannedOf(design, planned), [design, planned]);
}

/** Has these designs planned as long as somebody looks, the first first. */
export function usePlanning(designs: readonly Design[]): void {
  const { work } = useProofParts();
  const keys = designs
    .map((design) =>
      plateKeys(design)
        .map(({ key }) => key)
        .join('\n'),
    )
    .join('\n\n');
  useEffect(() => {
    work.plan(designs);
    // eslint-disable-next-line react-hooks/exhaustive-deps -- planned anew when plates are cut otherwise, not at every title typed
  }, [work, keys]);
  useEffect(() => () => work.rest(), [work]);
}
