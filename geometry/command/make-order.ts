import { loadFaces } from '../../fonts/node-faces.ts';
import { isAllApproved, orderWords, standingOf } from '../approval/standing.ts';
import { withOrderDays } from '../checks/order-days.ts';
import { fingerprintOf } from '../design/fingerprint.ts';
import type { Design } from '../design/schema.ts';
import { findingsText } from '../files/findings-file.ts';
import { oneLine } from '../files/plain-text.ts';
import { writeDxf } from '../files/dxf/dxf.ts';
import { plateFileNames } from '../files/names.ts';
import type { PaperName } from '../files/paper/page-size.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { writeSvg } from '../files/svg/svg.ts';
import type { OrderFile } from '../order-file/order-file.ts';
import { type OrderSigner, writeOrderFile } from '../order-file/write-order-file.ts';
import { makePlate } from '../pipeline/make-plate.ts';
import { planPlates } from '../pipeline/plan-plates.ts';
import { createStore } from '../pipeline/solve-store.ts';
import { sayWhereItHolds } from '../pipeline/where-it-holds.ts';
import { ownRules } from '../stock/own-rules.ts';
import type { StockBook } from '../stock/stock-book.ts';
import type { Day } from '../sentences/calendar.ts';
import type { Asked } from './asked.ts';
import { LINE_SIZES } from '../files/job/line-sizes.ts';
import { sheetFonts } from './read-files.ts';
import { Refusal } from './refusal.ts';
import { printSummary } from './print-summary.ts';
import { writerFor } from './write-files.ts';

/**
 * Files of one design. Gives the exit status: 2 when a finding or the approval stops the cut, or a plate finds no sheet.
 * What is said of the order's days goes into findings.json and to the terminal; the other files are the same on every
 * day.
 */
export async function makeOrder(
  asked: Asked,
  design: Design,
  book: StockBook,
  today: Day | undefined,
): Promise<number> {
  const { faces, problems } = await loadFaces(design);
  const store = createStore();
  const planned = planPlates(design, faces, store, book);
  const stopped = planned.some(({ plate }) => plate.verdict === 'stop');
  const write = await writerFor(asked.folder);
  const dated = planned.map(({ plate, plan }) => {
    const make = (tried: Design) => makePlate(tried, plate.plateId, faces, store, book);
    return { plate: withOrderDays(sayWhereItHolds(design, plate, make), design, today), plan };
  });
  await write('findings.json', findingsText(design, dated, problems));
  const unapproved = asked.approvedOnly === undefined ? undefined : whyNotApproved(design, book, asked.approvedOnly);
  const cut = unapproved === undefined && (!stopped || asked.evenSo);
  const files = cut ? cutFiles(design, planned) : [];
  for (const { name, text } of files) await write(name, text);
  const { paper } = asked;
  const sheet = cut ? await specSheet(design, planned, book, paper) : undefined;
  if (sheet) await write('spec-sheet.pdf', sheet);
  // The customer may look at what is not to be cut yet.
  if (asked.proof) await write('proof.pdf', await proof(design, planned, book, { paper, tiles: true }));
  printSummary(
    design,
    dated,
    problems,
    files.filter(({ name }) => name.endsWith('.dxf')).map(({ name }) => name),
  );
  if (sheet && asked.order) {
    const papers: OrderFile[] = [
      { name: 'proof.pdf', bytes: await proof(design, planned, book, { paper, tiles: false }), role: 'proof' },
      { name: 'spec-sheet.pdf', bytes: sheet, role: 'spec-sheet' },
      { name: 'findings.json', bytes: encode(findingsText(design, planned, problems)), role: 'findings' },
    ];
    const signer = asked.sign === undefined ? undefined : await (await import('./order-key.ts')).signerOf(asked.sign);
    const order = sealedOrder(design, files, papers, ownRules(design, book), signer);
    await write(order.name, order.bytes);
    console.log(`  ${order.name}`);
  }
  let missing = 0;
  if (sheet && asked.cut) {
    // Large with the paper's library: only loaded when there are sheets to cut.
    const { makeSheets } = await import('./make-sheets.ts');
    const size = LINE_SIZES[asked.cut];
    missing = await makeSheets(design, planned, book, size, write, [{ name: 'spec-sheet.pdf', bytes: sheet }]);
  }
  if (unapproved !== undefined) console.error(unapproved);
  else if (!cut)
    console.log(`No cut files written: a finding stops the cut. With --even-so they are written all the same.`);
  return stopped || unapproved !== undefined || missing > 0 ? 2 : 0;
}

/** What stands against cutting only what was approved, by the whole fingerprint, and as many as were approved. */
export function whyNotApproved(
  design: Design,
  book: StockBook,
  what: NonNullable<Asked['approvedOnly']>,
): string | undefined {
  const standing = standingOf(design, fingerprintOf(design, ownRules(design, book)));
  const flag = what === 'all' ? '--approved-only' : '--cut-approved';
  if (standing.kind === 'approved') {
    if (what === 'drawing' || isAllApproved(standing)) return undefined;
    const order = oneLine(orderWords(standing.order).words.english, 400);
    return `No cut files written. ${order}. Have the order approved as it is, or cut by --cut-approved.`;
  }
  const why = {
    open: 'nobody approved this design',
    changed: 'the design was changed after it was approved',
    short: 'the approval carries too few digits of the fingerprint to be sure that it is this design',
  }[standing.kind];
  return `No cut files written: ${why}. Have it approved as it is, or leave ${flag} out.`;
}

/** The order as one ZIP that can be checked. Throws a Refusal where what was approved is another design. */
function sealedOrder(
  design: Design,
  cut: readonly { readonly name: string; readonly text: string }[],
  papers: readonly OrderFile[],
  rules: object | undefined,
  signer: OrderSigner | undefined,
): { readonly name: string; readonly bytes: Uint8Array } {
  const fingerprint = fingerprintOf(design, rules);
  const standing = standingOf(design, fingerprint);
  const { kind } = standing;
  if (kind === 'approved' && !isAllApproved(standing)) {
    const order = oneLine(orderWords(standing.order).words.english, 400);
    throw new Refusal(`No order written. ${order}. Have the order approved as it is.`);
  }
  if (kind === 'changed') {
    throw new Refusal('No order written: what was approved is another design. Have it approved anew.');
  }
  if (kind === 'short') {
    throw new Refusal(
      'No order written: the approval carries too few digits of the fingerprint. Have it approved again.',
    );
  }
  return writeOrderFile({
    design,
    cut: cut.map(({ name, text }) => ({ name, bytes: encode(text), role: 'cut' })),
    papers,
    fingerprint,
    ownRules: rules,
    signer,
  });
}

/** DXF and SVG of every plate, with their names. */
export function cutFiles(design: Design, planned: readonly PlannedPlate[]): { name: string; text: string }[] {
  const plates = planned.map((p) => p.plate);
  const [dxf, svg] = [plateFileNames(design.title, plates, 'dxf'), plateFileNames(design.title, plates, 'svg')];
  return planned.flatMap(({ plate, plan }, i) => [
    { name: dxf[i]!, text: writeDxf(design, plate, plan) },
    { name: svg[i]!, text: writeSvg(design, plate, plan) },
  ]);
}

/** The PDF library is large: it is only loaded when there is a sheet to write. */
export async function specSheet(
  design: Design,
  planned: readonly PlannedPlate[],
  book: StockBook,
  page: PaperName = 'a4',
): Promise<Uint8Array> {
  const { writeSpecSheet } = await import('../files/paper/spec-sheet.ts');
  return writeSpecSheet(design, planned, await sheetFonts(), book, { page, language: 'en' });
}

/** For the customer, in English. */
export async function proof(
  design: Design,
  plates: readonly PlannedPlate[],
  book: StockBook,
  { paper, tiles }: { readonly paper: PaperName; readonly tiles: boolean } = { paper: 'a4', tiles: false },
): Promise<Uint8Array> {
  const { writeProof } = await import('../proof/write-proof.ts');
  return writeProof({ design, plates, book, page: paper, language: 'en', tiles }, await sheetFonts());
}

function encode(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
