/**
 * All that is agreed on (options, approval, revisions, what is let be) as actions. The rules stand in geometry/approval/;
 * where one may not be followed, the design comes back unchanged, and a function whose name begins with why says why.
 */
import * as acceptances from '../../../../geometry/approval/acceptances.ts';
import * as approval from '../../../../geometry/approval/approve.ts';
import { withOffer } from '../../../../geometry/approval/offer.ts';
import * as options from '../../../../geometry/approval/options.ts';
import * as revisions from '../../../../geometry/approval/revisions.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

/** Notes that somebody lets a finding be, as long as the design stays as it is. What stops a plate is never let be. */
export const acceptFinding = asStep(acceptances.acceptFinding);

/** One option more to choose from. */
export const addOption = asStep(options.addOption);

/** An option becomes the design itself; the design as it was becomes an option, under formerName. */
export const chooseOption = asStep(options.chooseOption);

export const dropOption = asStep(options.dropOption);

/** Sets name, stock, faces or plates of an option; a part that is undefined is as the design has it. */
export function editOption(design: Design, id: string, part: options.OptionPart): Change {
  const typed = Object.keys(part).join() === 'name';
  return { design: options.editOption(design, id, part), undo: typed ? 'merge' : 'step', about: `option:${id}:name` };
}

/** Approves what the design is now; undo takes all of it back in one step. */
export const approve = asStep(approval.approve);

/** The last offer that was made for it. */
export const setOffer = asStep((design, offer: Design['offer']) =>
  offer === design.offer ? design : { ...design, offer },
);

/** Title and quantities as they were approved, under the approved offer. */
export const bringOrderBack = asStep((design) =>
  design.approval?.offer ? withOffer(design, design.approval.offer) : design,
);

/** Takes the approval away; what was approved stays as a revision. */
export const withdrawApproval = asStep(approval.withdrawApproval);

/** Keeps the design as it is under the next letter. */
export const keepRevision = asStep(revisions.keepRevision);

/** The design as it was in a revision; what is now is kept first. */
export const bringBack = asStep(revisions.bringBack);

/** Takes all revisions out, so that the next one is A again; the approval stays. */
export const forgetRevisions = asStep((design) => (design.revisions ? revisions.withoutRevisions(design) : design));

function asStep<Asked extends unknown[]>(
  change: (design: Design, ...asked: Asked) => Design,
): (design: Design, ...asked: Asked) => Change {
  return (design, ...asked) => ({ design: change(design, ...asked), undo: 'step' });
}
