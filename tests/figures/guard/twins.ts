import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { acceptedOf } from '../../../geometry/approval/acceptances.ts';
import { approvedRevision } from '../../../geometry/approval/approved-revision.ts';
import { keepRevision } from '../../../geometry/approval/revisions.ts';
import { sameFingerprint } from '../../../geometry/approval/same-fingerprint.ts';
import { standingOf } from '../../../geometry/approval/standing.ts';
import { fingerprintOf, fingerprintText } from '../../../geometry/design/fingerprint.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { printInName, showFingerprint } from '../../../geometry/design/show-fingerprint.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import { approvalOf } from '../../../geometry/files/approval.ts';
import { findOutdated } from '../../../geometry/files/job/job.ts';
import { codeText } from '../../../geometry/files/paper/qr-code.ts';
import { checkMadeAgain } from '../../../geometry/order-file/check-made-again.ts';
import { markOf } from '../../../geometry/order-file/marks.ts';
import { writeOrderText } from '../../../geometry/order-file/order-text.ts';
import { readOrderFile } from '../../../geometry/order-file/read-order-file.ts';
import { writeOrderFile } from '../../../geometry/order-file/write-order-file.ts';
import { rowMark } from '../../../geometry/series/run-series.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { takeApproval, wasApprovedAs } from '../../../web/state/actions/agreed/take-approval.ts';
import { approved, madeOrder, smallDesign } from '../../order-file/sound-order.ts';
import { type Claim, once } from '../claim.ts';

/** Two designs of other letters whose fingerprints begin with the same digits. */
interface Twins {
  readonly digits: number;
  readonly one: Design;
  readonly other: Design;
}

const HOLE = 'WHO AND WHEN';
/** Some 2^20 tries find two that share 40 bits (birthday bound). */
const MOST_TRIES = 8_000_000;

function named(text: string): Design {
  const { approval: _, ...design } = smallDesign('OB');
  return { ...design, elements: design.elements.map((e) => (isText(e) ? { ...e, text } : e)) };
}

/** By search, as somebody would who wants an approval of one design to stand on another. */
function findTwins(digits: 8 | 10): Twins {
  const [before, after] = fingerprintText(named(HOLE)).split(HOLE) as [string, string];
  const begun = createHash('sha256').update(before);
  const seen = new Map<number, number>();
  for (let i = 0; i < MOST_TRIES; i++) {
    const begin = begun
      .copy()
      .update(textOf(i))
      .update(after)
      .digest()
      .readUIntBE(0, digits / 2);
    const first = seen.get(begin);
    if (first !== undefined) return { digits, one: named(textOf(first)), other: named(textOf(i)) };
    seen.set(begin, i);
  }
  throw new Error(`no twins of ${digits} digits in ${MOST_TRIES} tries`);
}

function textOf(i: number): string {
  return `${i % 2 ? 'OTTO' : 'ANNA'} ${i}`;
}

/** All that may not be taken for proof. */
const SHORTENED = [8, 10, 12, 15, 16, 63];

const twins = once(() => Promise.resolve([findTwins(8), findTwins(10)]));

/** Asks every place that compares fingerprints whether it takes one twin for the other; gives those that do. */
async function takenFor({ digits, one, other }: Twins): Promise<{ readonly asked: number; readonly taken: string[] }> {
  const [print, theirs] = [fingerprintOf(one), fingerprintOf(other)];
  const places: [string, boolean][] = [];
  const ask = (place: string, isTaken: boolean): void => void places.push([`${digits}: ${place}`, isTaken]);
  ask('really other designs', print === theirs || print.slice(0, digits) !== theirs.slice(0, digits));

  // The same questions must be answered with yes for the design itself, or nothing was asked.
  const own = approved(other, theirs);
  ask(
    'blind: approval',
    standingOf(own, theirs).kind !== 'approved' || !/^Approved/.test(approvalOf(own, theirs).text),
  );
  ask('blind: link', wasApprovedAs(other, theirs, theirs) !== 'now');

  const claims = [print, ...SHORTENED.flatMap((n) => [print.slice(0, n), theirs.slice(0, n)])];
  for (const claim of claims) {
    const carried = approved(other, claim);
    ask(`compared, ${claim.length}`, sameFingerprint(claim, theirs) || sameFingerprint(theirs, claim));
    ask(`approval, ${claim.length}`, standingOf(carried, theirs).kind === 'approved');
    ask(`papers and cut files, ${claim.length}`, /^Approved/.test(approvalOf(carried, theirs).text));
    const text = writeOrderText({ design: carried, plates: [], fingerprint: theirs, book: BUILT_IN }, (w) => w.english);
    ask(`order as text, ${claim.length}`, /^Approved/m.test(text));
    const accepted = [{ code: 'thin', who: 'Ada', at: '2027-01-04', fingerprint: claim }];
    ask(`accepted finding, ${claim.length}`, acceptedOf({ ...other, accepted }, theirs).length > 0);
    const kept = keepRevision(other, { at: '2027-01-04', why: '', fingerprint: theirs });
    ask(`revision, ${claim.length}`, approvedRevision({ ...kept, approval: carried.approval! }) !== undefined);
    ask(`link that comes back, ${claim.length}`, wasApprovedAs(kept, theirs, claim) !== undefined);
    const back = takeApproval(kept, { ...one, approval: carried.approval! }, theirs).design;
    ask(`approval taken from a link, ${claim.length}`, standingOf(back, theirs).kind === 'approved');
  }

  ask('name of a file', printInName(print) === printInName(theirs));
  ask('as it is shown', showFingerprint(print) === showFingerprint(theirs));
  ask('code on the sheet', codeText(one, print) === codeText({ ...other, title: one.title }, theirs));
  ask('row of a series', rowMark(one, 1, BUILT_IN) === rowMark(other, 1, BUILT_IN));
  const planned = { wish: 'a', title: '', reference: '', plateName: '', fingerprint: print, approval: '' };
  ask('plan of a sheet', findOutdated([planned], new Map([['a', theirs]])).length === 0);

  const [order, wrong] = [await madeOrder(one), await madeOrder(other)];
  for (const [i, { name, bytes }] of order.cut.entries()) {
    ask(`mark of ${name}`, markOf(name, bytes) === markOf(name, wrong.cut[i]!.bytes));
    // The other's file under this one's name, and sealed as an order of this one.
    const cut = order.cut.map((file) => (file.name === name ? { ...file, bytes: wrong.cut[i]!.bytes } : file));
    ask(`cut file in an order, ${name}`, readOrderFile(writeOrderFile({ ...order, cut }).bytes).kind === 'sound');
  }
  for (const [i, { name }] of order.papers.entries()) {
    if (name === 'order.txt') continue;
    const papers = order.papers.map((file, at) => (at === i ? { ...file, bytes: wrong.papers[i]!.bytes } : file));
    ask(`paper in an order, ${name}`, readOrderFile(writeOrderFile({ ...order, papers }).bytes).kind === 'sound');
  }
  const read = readOrderFile(order.bytes);
  ask('order made again', read.kind !== 'sound' || checkMadeAgain(read, wrong.cut, undefined).length === 0);
  ask('command with --approved-only', commandTakes(approved(other, print)));
  ask('command with eight digits', commandTakes(approved(other, theirs.slice(0, 8))));
  return { asked: places.length, taken: places.flatMap(([place, isTaken]) => (isTaken ? [place] : [])) };
}

function commandTakes(design: Design): boolean {
  const folder = mkdtempSync(join(tmpdir(), 'twins-'));
  try {
    const file = join(folder, 'design.json');
    writeFileSync(file, designText(design));
    const args = ['geometry/command/make-command.ts', file, '--out', folder, '--approved-only'];
    const { stderr } = spawnSync('node_modules/.bin/tsx', args, { encoding: 'utf8' });
    // Its status may be 2 for a finding too.
    return !/No cut files written: the (design was changed|approval carries too few)/.test(stderr);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export const TWIN_CLAIMS: readonly Claim[] = [
  {
    name: 'twins',
    wanted: '0 places that take one design for another by fewer than 64 digits; twins of 8 and 10 made by search',
    async measure() {
      const found = [];
      for (const pair of await twins()) found.push(await takenFor(pair));
      const asked = found.reduce((sum, f) => sum + f.asked, 0);
      const taken = found.flatMap((f) => f.taken);
      const named = taken.length > 0 ? `: ${taken.slice(0, 8).join('; ')}` : '';
      return { value: taken.length, unit: `of ${asked} places asked${named}`, ok: taken.length === 0 && asked > 100 };
    },
  },
];
