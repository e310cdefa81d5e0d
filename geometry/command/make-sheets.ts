import { findMaskWaste } from '../cutplan/plate/mask-waste.ts';
import { findBites } from '../cutplan/sheet/find-bites.ts';
import { planSheets } from '../cutplan/sheet/plan-sheets.ts';
import { gapsAtLeast, gapsFor, leastGapsFor, settingsFor, sheetKindsFor } from '../cutplan/cost/settings-for.ts';
import type { Design } from '../design/schema.ts';
import { type Job, jobDesign, sheetName } from '../files/job/job.ts';
import { factsOf } from '../files/job/job-facts.ts';
import { type JobFile, jobFiles, jobZip } from '../files/job/job-files.ts';
import type { LineWishes } from '../files/job/job-lines.ts';
import { oneLine } from '../files/plain-text.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { nest } from '../sheet/nest.ts';
import { processIn, type StockBook } from '../stock/stock-book.ts';
import { sheetFonts } from './read-files.ts';
import { Refusal } from './refusal.ts';
import type { Writer } from './write-files.ts';

/**
 * All plates of an order, as many of each as are wanted, on the stock's sheets: DXF, SVG and cut list (CSV, PDF) of every
 * sheet, and all of it with `others` in one ZIP. Gives how many plates found no place. Throws a Refusal where the stock
 * file cannot say how this stock is cut.
 */
export async function makeSheets(
  design: Design,
  planned: readonly PlannedPlate[],
  book: StockBook,
  size: LineWishes['size'],
  write: Writer,
  others: readonly JobFile[],
): Promise<number> {
  const settings = settingsFor(book, design.stock);
  const process = processIn(book, design.stock.process);
  if ('problem' in settings) throw new Refusal(oneLine(settings.problem, 500));
  if (!process) throw new Error(`settings without the process ${design.stock.process}`);
  const plates = planned.map((p, i) => ({ ...p, wish: `A${i + 1}` }));
  const { sheets, missing } = nest(
    plates.map(({ wish, plate }) => {
      const { diameterMm, quantity } = plate;
      return { id: wish, diameterMm, quantity, waste: findMaskWaste(design, plate) };
    }),
    sheetKindsFor(book, design.stock),
    gapsAtLeast(gapsFor(process), leastGapsFor(process, design.stock.thicknessMm)),
  );
  const plans = [...planSheets(sheets, new Map(plates.map(({ wish, plan }) => [wish, plan])), settings)];
  const job: Job = {
    sheets: sheets.map((sheet, i) => {
      const plan = plans[i]!;
      return { sheet, plan, facts: factsOf(book, design.stock, settings, plan) };
    }),
    designs: plates.map(({ wish, plate }) => jobDesign(wish, design, plate)),
  };
  for (const { sheet, plan } of job.sheets) {
    const [bite] = findBites(sheet, plan, settings.kerfMm);
    if (bite) throw new Refusal(oneLine(bite.sentence, 500));
  }
  for (const { sheet, plan } of job.sheets) {
    console.log(
      `${sheetName({ sheet, plan })}: ${sheet.plates.length} plates, ${(sheet.usedShare * 100).toFixed(0)} % of it used, ` +
        `${(plan.cuttingMm / 1000).toFixed(2)} m to cut, ${plan.passes.length} pierces`,
    );
    for (const { sentence } of plan.notes) console.log(`  look at: ${oneLine(sentence, 500)}`);
  }
  for (const { sentence } of missing) console.log(oneLine(sentence, 500));
  const fonts = await sheetFonts();
  const wishes = { size, witness: false };
  for (const { name, bytes } of await jobFiles(job, wishes, fonts)) {
    await write(name, bytes);
    console.log(`  ${name}`);
  }
  const zip = await jobZip(job, wishes, fonts, others);
  await write(zip.name, zip.bytes);
  console.log(`  ${zip.name}`);
  return missing.reduce((sum, { count }) => sum + count, 0);
}
