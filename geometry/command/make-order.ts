import { loadFaces } from '../../fonts/node-faces.ts';
import { withOrderDays } from '../checks/order-days.ts';
import type { Design } from '../design/schema.ts';
import { writeDxf } from '../files/dxf.ts';
import { plateFileNames } from '../files/names.ts';
import type { PlannedPlate } from '../files/sheet-drawing.ts';
import { writeSvg } from '../files/svg.ts';
import { planPlates } from '../plan-plates.ts';
import { createStore } from '../solve-store.ts';
import type { StockBook } from '../stock/stock-book.ts';
import type { Day } from '../words/calendar.ts';
import type { Asked } from './asked.ts';
import { sheetFonts } from './read-files.ts';
import { findingsText, printSummary } from './say-findings.ts';
import { writerFor } from './write-files.ts';

/**
 * Files of one design. Gives the exit status: 2 when a finding stops the cut. What is said of the order's days goes into
 * findings.json and to the terminal; the other files are the same on every day.
 */
export async function makeOrder(
  asked: Asked,
  design: Design,
  book: StockBook,
  today: Day | undefined,
): Promise<number> {
  const { faces, problems } = await loadFaces(design);
  const planned = planPlates(design, faces, createStore(), book);
  const stopped = planned.some(({ plate }) => plate.verdict === 'stop');
  const write = await writerFor(asked.folder);
  const dated = planned.map(({ plate, plan }) => ({ plate: withOrderDays(plate, design, today), plan }));
  await write('findings.json', findingsText(design, dated, problems));
  const cut = !stopped || asked.evenSo;
  const files = cut ? cutFiles(design, planned) : [];
  for (const { name, text } of files) await write(name, text);
  if (cut) await write('spec-sheet.pdf', await specSheet(design, planned, book));
  printSummary(
    design,
    dated,
    problems,
    files.filter(({ name }) => name.endsWith('.dxf')).map(({ name }) => name),
  );
  if (!cut) console.log(`No cut files written: a finding stops the cut. With --even-so they are written all the same.`);
  return stopped ? 2 : 0;
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
): Promise<Uint8Array> {
  const { writeSpecSheet } = await import('../files/spec-sheet.ts');
  return writeSpecSheet(design, planned, await sheetFonts(), book);
}
