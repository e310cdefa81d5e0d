import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { loadFaces } from '../../../fonts/node-faces.ts';
import { approve } from '../../../geometry/approval/approve.ts';
import { differencesOf } from '../../../geometry/approval/differences.ts';
import { cutFiles } from '../../../geometry/command/make-order.ts';
import { sheetFonts } from '../../../geometry/command/read-files.ts';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import { jobDesign } from '../../../geometry/files/job/job.ts';
import { jobFiles } from '../../../geometry/files/job/job-files.ts';
import { planPlates } from '../../../geometry/pipeline/plan-plates.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { packDesign } from '../../../web/handover/link/pack-design.ts';
import { readLink } from '../../../web/handover/link/read-link.ts';
import { demo, DEMOS } from '../../approval/demos.ts';
import { someEdits } from '../../approval/random-edits.ts';
import { threePlateJob } from '../../files/job-set-up.ts';
import { madeOrder } from '../../order-file/sound-order.ts';
import { readPdf } from '../../readers/pdf-reader.ts';
import type { Claim, Measured } from '../claim.ts';

const APPROVAL = { name: 'Ada Pell', at: '2027-01-04T09:30:00+01:00', how: 'link' } as const;
const LOUD = 'NOT THE APPROVED DESIGN';
const RUNS = 300;

function asApproved(design: Design): Design {
  return approve(design, { ...APPROVAL, fingerprint: fingerprintOf(design) });
}

/** Golden wedding as approved, with its last letter another. */
function oneLetterChanged(): Design {
  const approved = asApproved(demo('golden-wedding'));
  const first = approved.elements.find(isText)?.id;
  const change = (text: string) => `${text.slice(0, -1)}C`;
  return {
    ...approved,
    elements: approved.elements.map((e) => (e.id === first && isText(e) ? { ...e, text: change(e.text) } : e)),
  };
}

async function saidEverywhere(): Promise<Measured> {
  const design = oneLetterChanged();
  const { cut, papers } = await madeOrder(design);
  const job = threePlateJob();
  const { faces } = await loadFaces(design);
  const [plate] = planPlates(design, faces, createStore(), BUILT_IN);
  if (!plate) throw new Error('a design without plates');
  const designs = job.designs.map(({ wish }) => jobDesign(wish, design, plate.plate));
  const wishes = { size: { kind: 'path', leadIns: true }, witness: true } as const;
  const sheetFiles = await jobFiles({ ...job, designs }, wishes, await sheetFonts());
  const files = [
    ...cut,
    ...papers.filter((p) => p.role !== 'other'),
    ...sheetFiles.filter((f) => !f.name.endsWith('.csv')),
  ];
  const quiet: string[] = [];
  for (const { name, bytes } of files) {
    const text = name.endsWith('.pdf')
      ? (await readPdf(bytes)).texts.map((run) => run.text).join(' ')
      : new TextDecoder().decode(bytes);
    const said = name === 'findings.json' ? text.includes('"standing": "changed"') : text.toUpperCase().includes(LOUD);
    if (!said) quiet.push(name);
  }
  if (quiet.length > 0) console.error(`say nothing: ${quiet.join(', ')}`);
  return { value: `${files.length - quiet.length} of ${files.length}`, unit: 'files', ok: quiet.length === 0 };
}

async function changesUntold(): Promise<Measured> {
  let [changes, untold] = [0, 0];
  for (const [, design] of DEMOS) {
    for (const [one, two] of fc.sample(fc.tuple(someEdits, someEdits), { numRuns: RUNS, seed: 29 })) {
      const before = one(design);
      const after = two(before);
      const found = differencesOf(before, after, { book: BUILT_IN });
      const differ = fingerprintOf(before) !== fingerprintOf(after);
      if (differ) changes++;
      if (found.length > 0 !== differ || found.some((d) => d.code === 'differences.other')) untold++;
    }
  }
  return Promise.resolve({ value: untold, unit: `of ${changes} changes`, ok: untold === 0 && changes > RUNS });
}

async function otherBytes(): Promise<Measured> {
  const folder = mkdtempSync(join(tmpdir(), 'approval-'));
  try {
    const design = asApproved(demo('golden-wedding'));
    const packed = packDesign(design);
    const linked = 'fragment' in packed ? readLink(packed.fragment) : packed;
    const filed = readDesign(designText(design));
    if (!('design' in linked) || 'problem' in filed) throw new Error('the design does not come back');
    const wanted = await cutOf(design);
    const ways = [await cutOf(linked.design), await cutOf(filed.design), commanded(folder, design, wanted.keys())];
    const other = ways.flatMap((way) => [...wanted].filter(([name, text]) => way.get(name) !== text));
    return {
      value: other.length,
      unit: `of ${wanted.size * ways.length} files`,
      ok: other.length === 0 && wanted.size > 0,
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function cutOf(design: Design): Promise<ReadonlyMap<string, string>> {
  const { faces } = await loadFaces(design);
  return new Map(cutFiles(design, planPlates(design, faces, createStore(), BUILT_IN)).map((f) => [f.name, f.text]));
}

function commanded(folder: string, design: Design, names: Iterable<string>): ReadonlyMap<string, string> {
  const file = join(folder, 'design.json');
  writeFileSync(file, designText(design));
  const args = ['--import', 'tsx', 'geometry/command/make-command.ts', file, '--out', folder, '--approved-only'];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return new Map([...names].map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}

export const APPROVAL_CLAIMS: readonly Claim[] = [
  { name: 'one-letter-changed-is-said-by', wanted: 'every file of the order and its sheets', measure: saidEverywhere },
  { name: 'changes-without-their-difference', wanted: '0', measure: changesUntold },
  { name: 'approved-cut-files-unlike-by-link-file-and-command', wanted: '0', measure: otherBytes },
];
