/**
 * The headless command: npm run -s make -- DESIGN.json --out FOLDER [--even-so]
 *
 * Writes a DXF and an SVG for every plate, spec-sheet.pdf and findings.json. Exit status 0; 2 when a finding stops the
 * cut (then only findings.json is written, unless --even-so); 1 when the command or the design cannot be read, or a file
 * cannot be written: one line on stderr says where.
 */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { loadFaces, packageFile } from '../fonts/node-faces.ts';
import { createStore } from './solve-store.ts';
import { planCuts } from './cutplan/plan-cuts.ts';
import { readDesign } from './design/read-design.ts';
import type { Design } from './design/schema.ts';
import { writeDxf } from './files/dxf.ts';
import { plateFileNames } from './files/names.ts';
import { fileNumber } from './files/numbers.ts';
import { oneLine } from './files/plain-text.ts';
import type { PlannedPlate } from './files/sheet-drawing.ts';
import { writeSvg } from './files/svg.ts';
import { makePlate } from './make-plate.ts';
import { provePlan } from './prove-plan.ts';

const USAGE = 'npm run -s make -- DESIGN.json --out FOLDER [--even-so]';

interface Asked {
  readonly file: string;
  readonly folder: string;
  readonly evenSo: boolean;
}

/** Something the person can mend; its message is the one line that is printed. */
class Refusal extends Error {}

async function run(args: readonly string[]): Promise<number> {
  try {
    const asked = readArguments(args);
    return await makeFiles(asked, await designOf(asked.file));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    console.error(error.message);
    return 1;
  }
}

function readArguments(args: readonly string[]): Asked {
  let file: string | undefined;
  let folder: string | undefined;
  let evenSo = false;
  for (let i = 0; i < args.length; i++) {
    const arg = args[i]!;
    if (arg === '--even-so') evenSo = true;
    else if (arg === '--out') {
      folder = args[++i];
      if (folder === undefined || folder.startsWith('--')) throw new Refusal(`--out needs a folder. Use: ${USAGE}`);
    } else if (arg.startsWith('-')) throw new Refusal(`Nobody here knows ${arg}. Use: ${USAGE}`);
    else if (file === undefined) file = arg;
    else throw new Refusal(`One design at a time: ${file} or ${arg}? Use: ${USAGE}`);
  }
  if (file === undefined) throw new Refusal(`Say which design to make. Use: ${USAGE}`);
  if (folder === undefined) throw new Refusal(`Say where the files go. Use: ${USAGE}`);
  return { file, folder, evenSo };
}

async function designOf(file: string): Promise<Design> {
  const text = await readFile(file, 'utf8').catch((error: unknown) => {
    throw new Refusal(`${file}: cannot be read (${reasonOf(error)}).`);
  });
  const read = readDesign(text);
  if ('problem' in read) throw new Refusal(`${file}: ${oneLine(read.problem, 500)}`);
  return read.design;
}

async function makeFiles(asked: Asked, design: Design): Promise<number> {
  const { faces, problems } = await loadFaces(design);
  const store = createStore();
  const planned = design.plates.map((spec): PlannedPlate => {
    const plate = makePlate(design, spec.id, faces, store);
    const plan = planCuts(plate);
    return { plate: provePlan(plate, plan), plan };
  });
  const plates = planned.map((p) => p.plate);
  const stopped = plates.some((plate) => plate.verdict === 'stop');
  const dxf = plateFileNames(design.title, plates, 'dxf');
  const svg = plateFileNames(design.title, plates, 'svg');
  const write = await writerFor(asked.folder);

  await write('findings.json', `${JSON.stringify(findingsRecord(design, planned, problems), roundNumber, 2)}\n`);
  const cut = !stopped || asked.evenSo;
  if (cut) {
    for (const [i, { plate, plan }] of planned.entries()) {
      await write(dxf[i]!, writeDxf(design, plate, plan));
      await write(svg[i]!, writeSvg(design, plate, plan));
    }
    // The PDF library is large: it is only loaded when there is a sheet to write.
    const { writeSpecSheet } = await import('./files/spec-sheet.ts');
    await write('spec-sheet.pdf', await writeSpecSheet(design, planned, await sheetFonts()));
  }
  printSummary(design, planned, problems, cut ? dxf : []);
  if (!cut) console.log(`No cut files written: a finding stops the cut. With --even-so they are written all the same.`);
  return stopped ? 2 : 0;
}

async function writerFor(folder: string): Promise<(name: string, content: string | Uint8Array) => Promise<void>> {
  const refuse = (what: string) => (error: unknown) => {
    throw new Refusal(`${what}: cannot be written (${reasonOf(error)}).`);
  };
  await mkdir(folder, { recursive: true }).catch(refuse(folder));
  return (name, content) => writeFile(join(folder, name), content).catch(refuse(join(folder, name)));
}

async function sheetFonts(): Promise<{ regular: Uint8Array; bold: Uint8Array }> {
  const face = (weight: number) =>
    readFile(packageFile('@fontsource/source-sans-3', `files/source-sans-3-latin-${weight}-normal.woff`));
  const [regular, bold] = await Promise.all([face(400), face(600)]);
  return { regular, bold };
}

type Problems = readonly { readonly faceId: string; readonly problem: string }[];

/** Numbers as in the cut files: sixteen digits of a coordinate help nobody. */
function roundNumber(_key: string, value: unknown): unknown {
  return typeof value === 'number' && Number.isFinite(value) ? Number(fileNumber(value)) : value;
}

/** What findings.json holds: plain data for whoever reads it next. */
function findingsRecord(design: Design, planned: readonly PlannedPlate[], fontProblems: Problems): unknown {
  return {
    title: design.title,
    fingerprint: planned[0]?.plate.fingerprint,
    fontProblems,
    plates: planned.map(({ plate, plan }) => ({
      plateId: plate.plateId,
      name: plate.name,
      diameterMm: plate.diameterMm,
      quantity: plate.quantity,
      verdict: plate.verdict,
      measures: plate.measures,
      cuttingLengthMm: plan.cuttingLengthMm,
      pierces: plan.pierces,
      findings: plate.findings,
    })),
  };
}

const VERDICTS = {
  ready: 'holds together, ready to cut',
  look: 'holds together, with things to look at',
  stop: 'must not be cut',
};
const SAYS = { stop: 'do not cut', look: 'look at', note: 'to know' };

function printSummary(
  design: Design,
  planned: readonly PlannedPlate[],
  problems: Problems,
  files: readonly string[],
): void {
  console.log(`${oneLine(design.title, 120) || 'Stencil'}  ${planned[0]?.plate.fingerprint ?? ''}`);
  for (const { problem } of problems) console.log(`  font: ${oneLine(problem, 500)}`);
  planned.forEach(({ plate, plan }, i) => {
    const { openings, bridges, islands } = plate.measures;
    console.log(`${oneLine(plate.name, 60)}, ${plate.diameterMm.toFixed(1)} mm: ${VERDICTS[plate.verdict]}`);
    console.log(
      `  ${openings} openings, ${islands} loose pieces held by ${bridges} bridges, ` +
        `${(plan.cuttingLengthMm / 1000).toFixed(2)} m to cut, ${plan.pierces} pierces`,
    );
    for (const finding of plate.findings) console.log(`  ${SAYS[finding.severity]}: ${oneLine(finding.sentence, 500)}`);
    if (files[i]) console.log(`  ${files[i]}`);
  });
}

function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { code } = error as NodeJS.ErrnoException;
  return code ? (REASONS[code] ?? code) : error.message;
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'not allowed',
  ENOTDIR: 'part of the path is a file',
  EEXIST: 'there is a file of that name',
  ENOSPC: 'the disk is full',
};

process.exitCode = await run(process.argv.slice(2));
