import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { packageFile } from '../../fonts/node-faces.ts';
import { cutList, cutListCsv } from '../../geometry/files/job/cut-list.ts';
import { writeCutList } from '../../geometry/files/job/cut-list-pdf.ts';
import { writeJobDxf } from '../../geometry/files/job/dxf-job.ts';
import { findOutdated } from '../../geometry/files/job/job.ts';
import { jobZip, withOwnNames } from '../../geometry/files/job/job-files.ts';
import { jobLines } from '../../geometry/files/job/job-lines.ts';
import { stemOfOrder, stemOfSheet } from '../../geometry/files/job/job-stem.ts';
import { writeJobSvg } from '../../geometry/files/job/svg-job.ts';
import { runsOf } from '../../geometry/cutplan/pass-runs.ts';
import { contourLengthMm } from '../../geometry/measure/arc.ts';
import { contourPart } from '../../geometry/measure/contour-part.ts';
import { polylinePoints, readDxf } from '../readers/dxf-reader.ts';
import { ezdxfVersion, readWithEzdxf } from '../readers/ezdxf-reader.ts';
import { readPdf } from '../readers/pdf-reader.ts';
import { svgPathPoints } from '../readers/svg-reader.ts';
import { threePlateJob } from './job-set-up.ts';

const job = threePlateJob();
const [sheet] = job.sheets as [(typeof job.sheets)[number]];
const NET = { size: { kind: 'net' }, witness: false } as const;
const PATHS = { size: { kind: 'path', leadIns: true }, witness: true } as const;

/** The letters of the lists on paper. */
async function listFonts() {
  const face = (weight: number) =>
    readFile(packageFile('@fontsource/source-sans-3', `files/source-sans-3-latin-${weight}-normal.woff`));
  return { regular: await face(400), bold: await face(600) };
}

describe('a sheet as DXF', () => {
  it('says what every line is, in the order of cutting', () => {
    const { entities, layers, header } = readDxf(writeJobDxf(sheet, job.designs, PATHS));
    expect(header['$INSUNITS']).toBe(4);
    expect(Object.keys(layers).sort()).toEqual(['0', 'CUT', 'LEAD-IN', 'NOT CUT', 'RIM', 'WITNESS']);
    const leads = entities.filter((e) => e.layer === 'LEAD-IN');
    const runs = sheet.plan.passes.flatMap(runsOf);
    expect(runs.length).toBeGreaterThan(sheet.plan.passes.length);
    expect(leads.length).toBe(runs.length);
    leads.forEach((e, i) => {
      const { leadIn, cut } = runs[i]!;
      expect(e.vertices![0]!.x).toBeCloseTo(leadIn[0]!.x, 3);
      expect(e.vertices!.at(-1)!.y).toBeCloseTo(cut[0]!.y, 3);
    });
  });
  it('is the net shape alone when that is wanted', () => {
    const { entities } = readDxf(writeJobDxf(sheet, job.designs, NET));
    const cuts = sheet.plan.passes.filter((p) => p.kind !== 'witness');
    expect(entities.length).toBe(cuts.length + 2);
    expect(entities.filter((e) => e.layer === 'RIM').map((e) => (e.radius ?? 0) * 2)).toEqual(
      cuts.filter((p) => p.kind === 'rim').map((p) => (p.id.startsWith('b#1') ? 254 : 508)),
    );
    // The sheet's edge and what the remnant lost.
    expect(entities.slice(-2).map((e) => e.layer)).toEqual(['NOT CUT', 'NOT CUT']);
  });
  it('carries all fingerprints, or that of its plate', () => {
    const whole = writeJobDxf(sheet, job.designs, PATHS);
    for (const mark of ['1111 1111 1111 1111', '2222 2222 2222 2222', '3333 3333 3333 3333'])
      expect(whole).toContain(`Fingerprint: ${mark}`);
    const plate = sheet.sheet.plates[1]!;
    const one = writeJobDxf(sheet, job.designs, { ...NET, plate });
    expect(one).toContain('2222 2222 2222 2222');
    expect(one).not.toContain('1111 1111 1111 1111');
  });
  it('says that its plan is outdated, and why, when it was wanted all the same', async () => {
    const [why] = findOutdated(
      job.designs,
      new Map([...job.designs.map((d) => [d.wish, d.fingerprint] as const), ['a#1', 'f'.repeat(64)]]),
    );
    const outdated = [why!.problem];
    const dxf = writeJobDxf(sheet, job.designs, { ...NET, outdated });
    expect(dxf).toContain('OUTDATED: ');
    expect(dxf).toContain('ffff ffff ffff ffff');
    expect(writeJobDxf(sheet, job.designs, NET)).not.toContain('OUTDATED');
    expect(writeJobSvg(sheet, job.designs, { ...NET, outdated })).toContain('OUTDATED: ');
    const { name, bytes } = await jobZip(job, { ...NET, outdated }, await listFonts());
    expect(name).toMatch(/-outdated\.zip$/);
    expect(Object.keys(unzipSync(bytes)).every((file) => file.includes('-outdated-sheet-'))).toBe(true);
  });
  it('puts one plate back into its own frame, whatever way it lay', () => {
    const of = (i: number) => jobLines(sheet, { ...NET, plate: sheet.sheet.plates[i]! });
    const [lying, turned] = [of(0), of(1)];
    const middles = (lines: typeof lying) =>
      lines.map(({ run }) => run.reduce((sum, p) => sum + p.x + 1000 * p.y, 0) / run.length).sort((a, b) => a - b);
    middles(lying).forEach((m, i) => expect(middles(turned)[i]).toBeCloseTo(m, 4));
  });
  it('leaves tabs standing', () => {
    const mark = sheet.plan.passes.find((p) => p.id.endsWith('/large'))!;
    const runs = jobLines(sheet, PATHS).filter((l) => l.pass === mark.id && l.kind === 'witness');
    expect(runs.length).toBe(3);
    const tabs = mark.tabsMm!.reduce((sum, t) => sum + t.toMm - t.fromMm, 0);
    const cut = runs.reduce((sum, { run }) => {
      const closing = Math.hypot(run[0]!.x - run.at(-1)!.x, run[0]!.y - run.at(-1)!.y);
      return sum + contourLengthMm(run) - closing;
    }, 0);
    expect(cut).toBeCloseTo(contourLengthMm(mark.path) - tabs, 6);
  });
  it.runIf(ezdxfVersion() !== undefined)(
    'passes the audit of ezdxf in every manner',
    () => {
      const wishes = [NET, PATHS, { ...PATHS, size: { kind: 'path', leadIns: false } } as const];
      for (const wish of [...wishes, { ...PATHS, plate: sheet.sheet.plates[1]! }]) {
        const read = readWithEzdxf(writeJobDxf(sheet, job.designs, wish));
        expect(read).toMatchObject({ errors: 0, fixes: 0, insunits: 4 });
        expect(read.entities.length).toBe(jobLines(sheet, wish).length);
      }
    },
    60_000,
  );
});

describe('the name of a cut file', () => {
  const PATH_ONLY = { ...PATHS, size: { kind: 'path', leadIns: false } } as const;
  it('says which lines are in it, so that no kind of file takes the place of another', () => {
    const names = [NET, PATHS, PATH_ONLY, { ...NET, witness: true }].map((wish) => stemOfSheet(job, 0, wish));
    expect(new Set(names).size).toBe(4);
    expect(names[0]).toMatch(/-net-sheet-01$/);
    expect(names[1]).toMatch(/-path-lead-ins-marks-sheet-01$/);
    expect(names[2]).toMatch(/-path-marks-sheet-01$/);
  });
  it('carries title, order number and fingerprint of what is on it', () => {
    const designs = job.designs.map((d, i) => ({ ...d, title: `Käfer ${i}`, reference: 'MLP / 27-114' }));
    const own = { ...job, designs };
    const plate = sheet.sheet.plates[1]!;
    expect(stemOfSheet(own, 0, { ...NET, plate })).toBe('Kafer-1-MLP-27-114-2222222222222222-net-sheet-01-a-2');
    const whole = stemOfOrder(own, NET);
    expect(whole).toMatch(/^Kafer-0-and-2-MLP-27-114-[0-9a-f]{16}-net$/);
    const changed = designs.map((d) => (d.wish === 'b#1' ? { ...d, fingerprint: '4'.repeat(64) } : d));
    expect(stemOfOrder({ ...own, designs: changed }, NET)).not.toBe(whole);
  });
  it('stays short enough for any system, and names that meet get a number', () => {
    const long = job.designs.map((d) => ({ ...d, title: 'ß'.repeat(120), reference: 'x'.repeat(60) }));
    expect(stemOfSheet({ ...job, designs: long }, 0, { ...PATHS, outdated: ['so'] }).length).toBeLessThan(140);
    const bytes = new Uint8Array();
    const names = ['a.dxf', 'A.dxf', 'a.dxf', 'b'].map((name) => ({ name, bytes }));
    expect(withOwnNames(names).map((f) => f.name)).toEqual(['a.dxf', 'A-2.dxf', 'a-3.dxf', 'b']);
  });
});

describe('a part of a contour', () => {
  it('is the whole of it in pieces', () => {
    const { path } = sheet.plan.passes[0]!;
    const all = contourLengthMm(path);
    const lengths = [0, 0.3, 0.55, 1].map((share) => share * all);
    const sum = lengths.slice(1).reduce((total, to, i) => {
      const run = contourPart(path, lengths[i]!, to);
      const closing = Math.hypot(run[0]!.x - run.at(-1)!.x, run[0]!.y - run.at(-1)!.y);
      return total + contourLengthMm(run) - closing;
    }, 0);
    expect(sum).toBeCloseTo(all, 6);
  });
});

describe('the same as SVG', () => {
  it('draws what the DXF draws', () => {
    const svg = writeJobSvg(sheet, job.designs, PATHS);
    const paths = [...svg.matchAll(/<path class="(cut|rim)"[^>]* d="([^"]*)"/g)].map(([, , d = '']) =>
      svgPathPoints(d),
    );
    const dxf = readDxf(writeJobDxf(sheet, job.designs, PATHS)).entities.filter((e) => /^(CUT|RIM)$/.test(e.layer));
    expect(paths.length).toBe(dxf.length);
    dxf.forEach((e, i) => {
      const box = (points: readonly { x: number; y: number }[], sign: number) => [
        Math.min(...points.map((p) => p.x)),
        Math.max(...points.map((p) => p.x)),
        Math.min(...points.map((p) => sign * p.y)),
        Math.max(...points.map((p) => sign * p.y)),
      ];
      const [a, b] = [box(polylinePoints(e), 1), box(paths[i]!, -1)];
      a.forEach((v, k) => expect(v).toBeCloseTo(b[k]!, 1));
    });
    expect(svg).toContain('3333 3333 3333 3333');
  });
});

describe('the cut list', () => {
  it('is a table that another reader reads, in the order of the file', () => {
    const { data } = Papa.parse<string[]>(cutListCsv(sheet, job.designs).replace('\uFEFF', '').trim());
    expect(data.length).toBe(sheet.plan.passes.length + 1);
    expect(data[1]!.slice(0, 3)).toEqual(['1', 'witness mark', sheet.plan.passes[0]!.plate]);
    const sum = data.slice(1).reduce((total, row) => total + Number(row[5]), 0);
    expect(sum / cutList(sheet, job.designs).reduce((t, r) => t + r.lengthMm, 0)).toBeCloseTo(1, 6);
  });
  it('is a PDF that names sheet, designs and every page', async () => {
    const fonts = await listFonts();
    const bytes = await writeCutList(sheet, job.designs, fonts);
    expect(await writeCutList(sheet, job.designs, fonts)).toEqual(bytes);
    const read = await readPdf(bytes);
    const words = read.texts.map((t) => t.text).join(' ');
    expect(read.pages).toBeGreaterThan(1);
    for (const word of ['Sheet 1 of rack', '1111 1111 1111 1111', '3333 3333 3333 3333', `page 1 of ${read.pages}`])
      expect(words).toContain(word);
    const zip = await jobZip(job, PATHS, fonts);
    expect((await jobZip(job, PATHS, fonts)).bytes).toEqual(zip.bytes);
    expect(Object.keys(unzipSync(zip.bytes))).toEqual(
      ['.dxf', '.svg', '-cut-list.csv', '-cut-list.pdf'].map((end) => `${stemOfSheet(job, 0, PATHS)}${end}`),
    );
  });
});

describe('a plan', () => {
  it('no longer fits a design that was changed or is gone', () => {
    const now = new Map(job.designs.map((d) => [d.wish, d.fingerprint]));
    expect(findOutdated(job.designs, now)).toEqual([]);
    now.set('a#2', '9'.repeat(64)).delete('b#1');
    const said = findOutdated(job.designs, now).map((r) => r.problem);
    expect(said).toHaveLength(2);
    expect(said[0]).toContain('9999 9999 9999 9999');
    expect(said[1]).toContain('not among the designs');
  });
});
