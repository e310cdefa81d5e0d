import { strToU8 } from 'fflate';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { writeDxf } from '../../geometry/files/dxf/dxf.ts';
import { plateFileNames } from '../../geometry/files/names.ts';
import type { PlannedPlate } from '../../geometry/files/paper/plate-drawing.ts';
import { writeSvg } from '../../geometry/files/svg/svg.ts';
import { checkMadeAgain, type MadeAgain } from '../../geometry/order-file/check-made-again.ts';
import { faultOf } from '../../geometry/order-file/fault.ts';
import { checkSignature, SIGNATURE_NAME } from '../../geometry/order-file/signature.ts';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import { ownRules } from '../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Made, OpenedOrder, Progress } from './plate-api.ts';

type Make = (design: Design, plateId: string, book: StockBook) => Promise<Made>;

/**
 * Reads an order, makes its cut files again and compares them. Where a plate cannot be made (a face did not come), that
 * is said: without it nobody knows whether a file was changed and listed anew.
 */
export async function openOrder(
  bytes: Uint8Array,
  make: Make,
  book: StockBook,
  told: (progress: Progress) => void,
): Promise<OpenedOrder> {
  const read = readOrderFile(bytes);
  if (read.kind === 'unsound') return read;
  const { design } = read;
  const planned: PlannedPlate[] = [];
  for (const { id } of design.plates) {
    told({ done: planned.length, of: design.plates.length });
    const made = await make(design, id, book);
    if ('problem' in made) return made;
    if (made.plate.findings.some(({ code }) => code === 'face-not-there')) return { problem: 'handOver.noFace' };
    const plan = planCuts(made.plate);
    planned.push({ plate: provePlan(made.plate, plan), plan });
  }
  const signed = await checkSignature(read, subtleHere());
  if (signed === 'wrong') {
    return { kind: 'unsound', faults: [faultOf(SIGNATURE_NAME, 'orderFault.signatureWrong')], isOrder: true, design };
  }
  const faults = checkMadeAgain(read, cutAgain(design, planned), ownRules(design, book));
  if (faults.length > 0) return { kind: 'unsound', faults, isOrder: true, design };
  return { ...read, signed };
}

/** There is none where the page is not on https. */
function subtleHere(): SubtleCrypto | undefined {
  return (globalThis as { crypto?: { subtle?: SubtleCrypto } }).crypto?.subtle;
}

function cutAgain(design: Design, planned: readonly PlannedPlate[]): MadeAgain[] {
  const plates = planned.map(({ plate }) => plate);
  const [dxf, svg] = [plateFileNames(design.title, plates, 'dxf'), plateFileNames(design.title, plates, 'svg')];
  return planned.flatMap(({ plate, plan }, i) => [
    { name: dxf[i]!, bytes: strToU8(writeDxf(design, plate, plan)) },
    { name: svg[i]!, bytes: strToU8(writeSvg(design, plate, plan)) },
  ]);
}
