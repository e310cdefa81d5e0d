/**
 * What the kernel says of approvals and revisions, in English. A table of its own, so that it comes along only where
 * there is something approved or to approve.
 */
export const APPROVAL_EN = {
  approving: {
    manyOptions: 'There are {{most}} options besides the design itself, as many as there may be. Take one out first.',
    noName: 'Nobody is named. Type the name of the person who approves.',
  },
  revisions: {
    full: 'The letters A to Z are all used for revisions. Save a copy of this design without its revisions and go on there; it begins anew at A.',
    large:
      'The revisions kept so far are so large, with their drawings, that no more can be kept. Save a copy of this design without its revisions and go on there.',
  },
} as const;
