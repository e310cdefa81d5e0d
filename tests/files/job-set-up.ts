import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import { type Job, jobDesign } from '../../geometry/files/job/job.ts';
import { marksOf, sheetOfThree } from '../cutplan/drift-set-up.ts';
import { LASER } from '../figures/cut/demo-sheet.ts';
import { handDesign, handPlate } from './hand-plate.ts';

/** A sheet of three plates of three designs with witness marks, one plate turned; small tabs where pieces may tip. */
export function threePlateJob(): Job {
  const three = sheetOfThree();
  const sheet = { ...three, plates: three.plates.map((p) => (p.id === 'a#2' ? { ...p, turnDeg: 37 } : p)) };
  const plates = new Map([
    ['a#1', { ...handPlate(508), fingerprint: '1'.repeat(64) }],
    ['a#2', { ...handPlate(508), fingerprint: '2'.repeat(64) }],
    ['b#1', { ...handPlate(254, 'Half size'), fingerprint: '3'.repeat(64) }],
  ]);
  const plans = new Map([...plates].map(([id, plate]) => [id, planCuts(plate)]));
  const plan = planSheet(sheet, plans, LASER, { marks: marksOf(1), tabs: true });
  const designs = [...plates].map(([id, plate]) => jobDesign(id, handDesign(), plate));
  return { sheets: [{ sheet, plan }], designs };
}
