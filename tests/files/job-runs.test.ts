import { describe, expect, it } from 'vitest';
import { settingsFor } from '../../geometry/cutplan/cost/settings-for.ts';
import { runsOf } from '../../geometry/cutplan/pass-runs.ts';
import { runLengthMm, sampleRun } from '../../geometry/cutplan/contour-walk.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { planSheet } from '../../geometry/cutplan/sheet/plan-sheet.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import { writeJobDxf } from '../../geometry/files/job/dxf-job.ts';
import { factsOf } from '../../geometry/files/job/job-facts.ts';
import { jobLines } from '../../geometry/files/job/job-lines.ts';
import { contourToRing } from '../../geometry/measure/arc.ts';
import { regionHolds } from '../../geometry/measure/ring.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { sheetOfThree } from '../cutplan/drift-set-up.ts';
import { LASER } from '../figures/cut/demo-sheet.ts';
import { readDxf } from '../readers/dxf-reader.ts';
import { ezdxfVersion, readWithEzdxf } from '../readers/ezdxf-reader.ts';
import { handPlate } from './hand-plate.ts';
import { threePlateJob } from './job-set-up.ts';

const job = threePlateJob();
const [sheet] = job.sheets as [(typeof job.sheets)[number]];
const JOINED = { size: { kind: 'path', leadIns: true, joined: true }, witness: true } as const;

/** The same sheet under a jet, which goes on past the closing point. */
function jetPlan() {
  const three = sheetOfThree();
  const plans = new Map(three.plates.map((p) => [p.wish, planCuts(handPlate(p.diameterMm))]));
  return planSheet(three, plans, { ...LASER, kerfMm: 1, leadInMm: 4, overlapMm: 1.5 });
}

describe('a cut in one open line', () => {
  it('is as many lines as the head pierces, none of them closed, each begun at its pierce', () => {
    const runs = sheet.plan.passes.flatMap(runsOf);
    const drawn = readDxf(writeJobDxf(sheet, job.designs, JOINED)).entities.filter((e) => e.layer !== 'NOT CUT');
    expect(drawn).toHaveLength(runs.length);
    drawn.forEach((e, i) => {
      expect(e.shape ?? false).toBe(false);
      expect(e.vertices![0]!.x).toBeCloseTo(runs[i]!.leadIn[0]!.x, 3);
      expect(e.vertices![0]!.y).toBeCloseTo(runs[i]!.leadIn[0]!.y, 3);
    });
  });
  it('is as long as its parts', () => {
    const lines = jobLines(sheet, JOINED).filter((l) => l.kind !== 'not cut');
    const joined = lines.reduce((sum, { run }) => sum + runLengthMm(run), 0);
    expect(joined / sheet.plan.cuttingMm).toBeCloseTo(1, 6);
  });
});

describe('what the operator must set', () => {
  const { stock } = emptyDesign();
  const facts = factsOf(BUILT_IN, stock, LASER, sheet.plan);
  const told = { ...sheet, facts };
  it('names material, thickness, process, kerf, feed, gas, film side and time', () => {
    const all = facts.join(' ');
    for (const word of [
      'Material',
      `${stock.thicknessMm} mm`,
      'Process',
      'kerf 0.2 mm',
      '4000 mm/min',
      'Gas',
      'film',
      'Time',
    ])
      expect(all).toContain(word);
  });
  it('stands in the drawing below the sheet, on a layer of its own, and can be left out', () => {
    const read = readDxf(writeJobDxf(told, job.designs, JOINED));
    const texts = read.entities.filter((e) => e.layer === 'NOTES');
    expect(texts.length).toBeGreaterThanOrEqual(facts.length);
    expect(texts.every((e) => e.type === 'TEXT')).toBe(true);
    const bare = readDxf(writeJobDxf(told, job.designs, { ...JOINED, bare: true }));
    expect(bare.entities.some((e) => e.layer === 'NOTES')).toBe(false);
    expect(bare.entities.length + texts.length).toBe(read.entities.length);
  });
  it.runIf(ezdxfVersion() !== undefined)('is read by ezdxf without a fault', () => {
    const read = readWithEzdxf(writeJobDxf(told, job.designs, { ...JOINED, moves: true }));
    expect(read).toMatchObject({ errors: 0, fixes: 0 });
    expect(read.entities.filter((e) => e.kind === 'TEXT' && e.layer === 'NOTES').length).toBeGreaterThan(4);
    expect(read.extmin[1]).toBeLessThan(0);
  });
});

describe('the end of a cut', () => {
  it('goes on past the closing point under a jet and a torch, and not under a laser', () => {
    const { stock } = emptyDesign();
    const overlap = (kind: string, material = stock.material) => {
      const process = BUILT_IN.processes.find((p) => p.kind === kind)!;
      const own = process.cutting.find((c) => c.materials.includes(material)) ?? process.cutting[0]!;
      const found = settingsFor(BUILT_IN, {
        ...stock,
        process: process.id,
        material: own.materials[0]!,
        thicknessMm: own.rows[0]!.thicknessMm,
      });
      if ('problem' in found) throw new Error(found.problem);
      return found.overlapMm ?? 0;
    };
    expect(overlap('laser')).toBe(0);
    expect(overlap('jet')).toBeGreaterThanOrEqual(1);
    expect(overlap('plasma')).toBeGreaterThanOrEqual(2);
  });
  it('follows the path first, then leaves it into the waste', () => {
    const { passes } = jetPlan();
    let tails = 0;
    for (const pass of passes) {
      const { leadOut = [], path } = pass;
      expect(leadOut.length).toBeGreaterThan(1);
      expect(Math.hypot(leadOut[0]!.x - path[0]!.x, leadOut[0]!.y - path[0]!.y)).toBeLessThan(1e-9);
      const ring = contourToRing(path, 0.005);
      const off = (p: { x: number; y: number }) => Math.min(...ring.map((q) => Math.hypot(p.x - q.x, p.y - q.y)));
      const points = sampleRun(leadOut, 0.1);
      expect(runLengthMm(leadOut)).toBeGreaterThanOrEqual(1.5 - 1e-6);
      if (pass.kind === 'rim' || runLengthMm(leadOut) < 1.5 + 1e-3) continue;
      tails++;
      const end = points.at(-1)!;
      expect(regionHolds({ outer: ring, holes: [] }, end)).toBe(true);
      expect(off(end)).toBeGreaterThan(0.4);
    }
    expect(tails).toBeGreaterThan(0);
  });
});

describe('the ways between cuts', () => {
  const lines = jobLines(sheet, { ...JOINED, moves: true }).filter((l) => l.kind !== 'not cut');
  it('stand each before what it leads to, from where the last cut ended', () => {
    let at = { x: 0, y: 0 };
    lines.forEach(({ kind, run }, i) => {
      if (i % 2 === 0) expect(kind).toMatch(/^move/);
      else expect(kind).not.toMatch(/^move/);
      expect(Math.hypot(run[0]!.x - at.x, run[0]!.y - at.y)).toBeLessThan(1e-6);
      at = run.at(-1)!;
    });
  });
  it('are on layers of their own, and the file says that they are not cut', () => {
    const dxf = writeJobDxf(sheet, job.designs, { ...JOINED, moves: true });
    expect(Object.keys(readDxf(dxf).layers)).toContain('MOVE');
    expect(dxf).toContain('MOVE and MOVE RAISED are not cut');
    expect(writeJobDxf(sheet, job.designs, JOINED)).toContain('The machine chooses the ways between cuts.');
  });
  it('never pass over marks that are left out of the file', () => {
    const without = jobLines(sheet, { ...JOINED, witness: false, moves: true }).filter((l) => l.kind !== 'not cut');
    let at = { x: 0, y: 0 };
    for (const { run } of without) {
      expect(Math.hypot(run[0]!.x - at.x, run[0]!.y - at.y)).toBeLessThan(1e-6);
      at = run.at(-1)!;
    }
  });
});
