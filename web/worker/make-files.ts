import { strToU8 } from 'fflate';
import { zipOf } from '../../geometry/adapters/zip-stream.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import type { CutPlan } from '../../geometry/cutplan/cut-plan.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import { printInName } from '../../geometry/design/show-fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { writeDxf } from '../../geometry/files/dxf/dxf.ts';
import { plateFileNames } from '../../geometry/files/names.ts';
import { writeSvg } from '../../geometry/files/svg/svg.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import { fileStem } from './file-stem.ts';
import { fetchPaperFonts } from './paper-fonts.ts';
import type { Key } from '../words/keys.ts';
import type { Made, MadeFile, MadeFiles, Paper, PaperManner, Progress, ProofWish, WantedFile } from './plate-api.ts';

interface Planned {
  readonly plate: PlateResult;
  readonly plan: CutPlan;
}

/**
 * Makes the wanted files from the design anew, so that what is shown and what is cut cannot drift apart.
 * A plate that must not be cut gives no file but the reason.
 */
export async function makeFiles(
  design: Design,
  wanted: readonly WantedFile[],
  make: (design: Design, plateId: string, book: StockBook) => Promise<Made>,
  book: StockBook,
  told: (progress: Progress) => void = () => undefined,
): Promise<MadeFiles> {
  const isOrder = wanted.some((w) => w.kind === 'order');
  if (isOrder && (await orders()).approvalIsStale(design, book)) return { problem: 'handOver.staleApproval' };
  const needed = wanted.some(
    (w) => w.kind === 'all' || w.kind === 'spec-sheet' || w.kind === 'proof' || w.kind === 'order',
  )
    ? design.plates.map((p) => p.id)
    : wanted.flatMap((w) => ('plateId' in w ? [w.plateId] : []));
  const planned = new Map<string, Planned>();
  const steps = new Set(needed).size + wanted.length;
  for (const plateId of new Set(needed)) {
    told({ done: planned.size, of: steps });
    const made = await make(design, plateId, book);
    if ('problem' in made) return made;
    const plan = planCuts(made.plate);
    const plate = provePlan(made.plate, plan);
    const stop = plate.findings.find((f) => f.severity === 'stop');
    if (stop !== undefined) return { stopped: { plate: plate.name, finding: stop } };
    planned.set(plateId, { plate, plan });
  }
  const files: MadeFile[] = [];
  for (const want of wanted) {
    told({ done: planned.size + files.length, of: steps });
    if (want.kind === 'order') files.push(await order(design, planned, want.papers ?? [], book));
    else if (want.kind === 'all') files.push(await everything(design, planned, book));
    else if (want.kind === 'spec-sheet') files.push(await specSheet(design, planned, book, want.manner));
    else if (want.kind === 'proof') {
      const made = await proof(design, planned, want.wish, make, book);
      if ('problem' in made) return made;
      files.push(made);
    } else files.push(cutFile(design, want.kind, want.plateId, planned, book));
  }
  return { files };
}

function cutFile(
  design: Design,
  kind: 'dxf' | 'svg',
  plateId: string,
  planned: ReadonlyMap<string, Planned>,
  book: StockBook,
): MadeFile {
  const found = planned.get(plateId);
  if (found === undefined) throw new Error(`no plate ${plateId}`);
  const text = kind === 'dxf' ? writeDxf(design, found.plate, found.plan) : writeSvg(design, found.plate, found.plan);
  const type = kind === 'dxf' ? 'image/vnd.dxf' : 'image/svg+xml';
  return { name: cutFileName(design, kind, plateId, book), type, bytes: strToU8(text) };
}

/** The same name whether a plate is taken alone or with the others. */
function cutFileName(design: Design, kind: 'dxf' | 'svg', plateId: string, book: StockBook): string {
  const fingerprint = fingerprintOf(design, ownRules(design, book));
  const plates = design.plates.map(({ name }) => ({ name, fingerprint }));
  return (
    plateFileNames(design.title, plates, kind)[design.plates.findIndex((p) => p.id === plateId)] ?? `plate.${kind}`
  );
}

async function specSheet(
  design: Design,
  planned: ReadonlyMap<string, Planned>,
  book: StockBook,
  manner: PaperManner = { page: 'a4', language: 'en' },
): Promise<MadeFile> {
  const [{ writeSpecSheet }, { paperSpeak }, fonts] = await Promise.all([
    import('../../geometry/files/paper/spec-sheet.ts'),
    import('../words/paper-speak.ts'),
    fetchPaperFonts(),
  ]);
  const spoken = { ...manner, speak: await paperSpeak(manner.language) };
  const bytes = await writeSpecSheet(design, [...planned.values()], fonts, book, spoken);
  return paperFile(design, book, 'spec-sheet', bytes);
}

async function proof(
  design: Design,
  planned: ReadonlyMap<string, Planned>,
  wish: ProofWish,
  make: (design: Design, plateId: string, book: StockBook) => Promise<Made>,
  book: StockBook,
): Promise<MadeFile | { readonly problem: Key }> {
  const [{ proofBytes }, fonts] = await Promise.all([import('./make-proof.ts'), fetchPaperFonts()]);
  const made = await proofBytes(design, [...planned.values()], wish, make, book, fonts);
  return 'problem' in made ? made : paperFile(design, book, 'proof', made.bytes);
}

function paperFile(design: Design, book: StockBook, what: 'proof' | 'spec-sheet', bytes: Uint8Array): MadeFile {
  const print = printInName(fingerprintOf(design, ownRules(design, book)));
  return { name: `${fileStem(design.title)}-${print}-${what}.pdf`, type: 'application/pdf', bytes: bytes.slice() };
}

async function everything(design: Design, planned: ReadonlyMap<string, Planned>, book: StockBook): Promise<MadeFile> {
  const files = [...planned.keys()].flatMap((id) => [
    cutFile(design, 'dxf', id, planned, book),
    cutFile(design, 'svg', id, planned, book),
  ]);
  files.push(await specSheet(design, planned, book));
  const stem = `${fileStem(design.title)}-${printInName(fingerprintOf(design, ownRules(design, book)))}`;
  const bytes = zipOf([{ name: `${stem}.json`, bytes: strToU8(designText(design)) }, ...files]);
  return { name: `${stem}.zip`, type: 'application/zip', bytes: bytes.slice() };
}

/** The whole order: cut files of every plate and the papers, with a list that proves them. */
async function order(
  design: Design,
  planned: ReadonlyMap<string, Planned>,
  given: readonly Paper[],
  book: StockBook,
): Promise<MadeFile> {
  const cut = [...planned.keys()].flatMap((id) => [
    cutFile(design, 'dxf', id, planned, book),
    cutFile(design, 'svg', id, planned, book),
  ]);
  const hasSheet = given.some(({ role }) => role === 'spec-sheet');
  const sheet: readonly Paper[] = hasSheet
    ? []
    : [{ role: 'spec-sheet', file: await specSheet(design, planned, book) }];
  return (await orders()).sealOrder(design, [...planned.values()], cut, [...given, ...sheet], book);
}

/** Only whoever asks for an order needs it. */
function orders() {
  return import('./make-order.ts');
}
