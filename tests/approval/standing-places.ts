import { whyNotApproved } from '../../geometry/command/make-order.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { approvalOf } from '../../geometry/files/approval.ts';
import { findingsText } from '../../geometry/files/findings-file.ts';
import { writeSpecSheet } from '../../geometry/files/paper/spec-sheet.ts';
import { writeOrderText } from '../../geometry/order-file/order-text.ts';
import { writeProof } from '../../geometry/proof/write-proof.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { approvalIsStale } from '../../web/worker/make-order.ts';
import { asked, fonts, plannedPlate } from '../proof/set-up.ts';
import { readPdf } from '../readers/pdf-reader.ts';
import { type ChangeCase, priced, type Truth } from './changes-table.ts';

/** Every place that says how a design stands: what is untrue there, in words; undefined where nothing is. */
export const PLACES: Readonly<Record<string, (of: ChangeCase) => Promise<string | undefined> | string | undefined>> = {
  'cut file': ({ design, drawing }) => wrong(approvalOf(design, fingerprintOf(design)).text, DRAWING[drawing]),
  'line of the order': ({ design, order }) => wrong(approvalOf(design, fingerprintOf(design)).order, ORDER[order]),
  'order as text': ({ design, drawing, order }) => {
    const fingerprint = fingerprintOf(design);
    const text = writeOrderText({ design, plates: [], fingerprint, book: BUILT_IN }, (words) => words.english);
    return (
      wrong(text, new RegExp(TEXT[drawing].source, 'm')) ?? (order === 'open' ? undefined : wrong(text, IN_TEXT[order]))
    );
  },
  'findings.json': ({ design, drawing, order }) => {
    const plate = { ...plannedPlate(500).plate, fingerprint: fingerprintOf(design) };
    const { approval } = JSON.parse(findingsText(design, [{ ...plannedPlate(500), plate }], [])) as {
      approval: { standing: string; order?: string };
    };
    const said = `${approval.standing} ${approval.order ?? 'unbound'}`;
    const should = `${KIND[drawing]} ${order === 'open' ? 'unbound' : KIND[order]}`;
    return said === should ? undefined : `${said}, should be ${should}`;
  },
  'ZIP of the page': (of) => unlike(approvalIsStale(of.design, BUILT_IN), of.drawing !== 'open' && !isAll(of)),
  '--approved-only': (of) => unlike(whyNotApproved(of.design, BUILT_IN, 'all') === undefined, isAll(of)),
  '--cut-approved': ({ design, drawing }) =>
    unlike(whyNotApproved(design, BUILT_IN, 'drawing') === undefined, drawing === 'holds'),
  'spec sheet': async ({ design, drawing, order }) => {
    const text = await textOf(await writeSpecSheet(design, planned(design), fonts, BUILT_IN));
    if (drawing === 'holds' && order === 'changed') return wrong(text, /Order not as approved/i);
    return wrong(text, SHEET[drawing]);
  },
  proof: async (of) => {
    const { design, drawing, order } = of;
    const today = priced(77_777);
    const text = await textOf(await writeProof(asked({ design, plates: planned(design), quote: today }), fonts));
    const titled = unlike(text.includes('A P P R O V E D P R O O F'), isAll(of));
    if (titled !== undefined) return `title: ${titled}`;
    const loud = unlike(/Order not as approved/.test(text), order === 'changed' && drawing !== 'open');
    if (loud !== undefined && drawing === 'holds') return `order: ${loud}`;
    // Under an approved order stands the price that was approved.
    const { offer } = design.approval ?? {};
    if (isAll(of) && offer?.price && text.includes('€777.77')) return 'the price of today under an approved order';
    return wrong(text, SHEET[drawing === 'holds' && order === 'changed' ? 'changed-order' : drawing]);
  },
};

function isAll({ drawing, order }: ChangeCase): boolean {
  return drawing === 'holds' && order !== 'changed';
}

const KIND: Readonly<Record<Truth, string>> = {
  holds: 'approved',
  changed: 'changed',
  unbound: 'unbound',
  open: 'open',
};
const NEVER = /^\b$/;
const DRAWING: Readonly<Record<Truth, RegExp>> = {
  holds: /^Approved by /,
  changed: /^NOT THE APPROVED DESIGN/,
  unbound: NEVER,
  open: /^Not yet approved$/,
};
const TEXT = { ...DRAWING, changed: /^NOT APPROVED: /, open: /^Not approved yet$/ };
const ORDER: Readonly<Record<Truth, RegExp>> = {
  holds: /^Order as approved: /,
  changed: /^ORDER NOT AS APPROVED: /,
  unbound: /^The approval is for the drawing only/,
  open: /^$/,
};
const IN_TEXT: Readonly<Record<Truth, RegExp>> = {
  holds: /^Order as approved: /m,
  changed: /^Order not as approved: /m,
  unbound: /^The approval is for the drawing only/m,
  open: NEVER,
};
const SHEET: Readonly<Record<Truth | 'changed-order', RegExp>> = {
  holds: /Approved by /,
  changed: /Not the approved design/i,
  unbound: NEVER,
  open: /Not yet approved/,
  'changed-order': /Order not as approved/i,
};

function planned(design: ChangeCase['design']) {
  const one = plannedPlate(500);
  return [{ ...one, plate: { ...one.plate, fingerprint: fingerprintOf(design) } }];
}

async function textOf(bytes: Uint8Array): Promise<string> {
  return (await readPdf(bytes)).texts.map((run) => run.text).join(' ');
}

function wrong(said: string, should: RegExp): string | undefined {
  return should.test(said) ? undefined : `“${said.slice(0, 120)}”, should be ${should.source}`;
}

function unlike(said: boolean, should: boolean): string | undefined {
  return said === should ? undefined : `${said}, should be ${should}`;
}
