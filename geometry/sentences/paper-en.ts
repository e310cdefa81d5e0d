import { makeSay } from './make-say.ts';
import { PROOF_EN } from './proof-en.ts';
import { SHEET_EN } from './sheet-en.ts';

/** What stands on every paper, and the cautions, in English. A table of its own: it comes along only where papers are written. */
export const PAPER_EN = makeSay({
  ...PROOF_EN,
  ...SHEET_EN,
  paper: {
    approvedBy: 'Approved by {{who}}',
    approvedLetter: 'Approved by {{who}} as revision {{letter}}',
    byEye: 'Compare by eye: {{who}} approved {{approved}}, too short a fingerprint to be sure; this is {{now}}',
    findings: 'Findings',
    fingerprint: 'Fingerprint {{fingerprint}}',
    material: 'Material',
    none: 'None.',
    notApproved: 'Not yet approved',
    notThis: 'Not the approved design: {{who}} approved {{approved}}, this is {{now}}',
    notes: 'Notes',
    off: '{{name}}, {{quantity}} off',
    order: 'Order',
    pageOf: 'page {{number}} of {{of}}',
    paint: 'Paint',
    personOn: '{{person}}, {{day}}',
    plate: 'Plate',
    printCheck: 'Print check: this line is {{length}} long when printed at full size',
    process: 'Process',
    quantity: 'Quantity',
    revision: 'Revision {{letter}}',
    revisionAfter: 'Changed since revision {{letter}}',
    scale: 'Scale 1:{{scale}}',
    seenFrom: 'seen from the painted side',
    sizesIn: 'sizes in millimetres',
    someone: 'someone',
    stencil: 'Stencil',
    stock: 'Stock',
    takeCare: 'Take care',
    thickness: 'Thickness',
    torch: 'Torch',
    use: 'Use',
  },
  paperCaution: {
    chromium: 'Hot stainless steel can give off chromium compounds: 29 CFR 1910.1026 sets the limit in air.',
    defer: 'Local codes and licensed or trained people come before anything on this paper.',
    edges: 'Cut edges are sharp: deburr, and handle with cut-resistant gloves (29 CFR 1910.138).',
    hot: 'The plate stays hot long after the flame: heat gloves or tongs, and somewhere to lay it that cannot burn.',
    hotWork:
      'Hot work needs leave: what burns is moved, guarded or watched within 35 ft (10.7 m), and a fire watch stays at least half an hour after (29 CFR 1910.252; NFPA 51B may ask for longer and for a written permit).',
    paint:
      'Spray paint: enough moving air, no flame or spark near (29 CFR 1910.107), and the respirator and gloves that the paint’s own data sheet asks for.',
    paintDry: 'Paint or solvent on the wood must be dry and gone before a flame comes near.',
    plastic:
      'Plastic under a laser: ask for the sheet’s data sheet first. PVC and vinyl never; ABS and HDPE burn or give off poison.',
    process: '{{process}}: {{caution}}',
    spirit:
      'Torch: never near spirit, its vapour or a cask that held it; an empty cask may hold flammable vapour (ethanol flashes at 12.8 °C, NIOSH Pocket Guide).',
    toPaint: 'This plate is made for paint, not for the torch.',
  },
});
