import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { newLineText } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { designText } from '../../geometry/design/write-design.ts';
import { readPdf } from '../readers/pdf-reader.ts';
import { readDxf } from '../readers/dxf-reader.ts';
import { handDesign } from './hand-plate.ts';

/** What `npm run make` starts, without npm around it. */
const COMMAND = ['--import', 'tsx', 'geometry/command/make-command.ts'];
const folder = mkdtempSync(join(tmpdir(), 'command-'));
afterAll(() => rmSync(folder, { recursive: true }));

function make(name: string, text: string, ...more: string[]) {
  const file = join(folder, `${name}.json`);
  const out = join(folder, name);
  writeFileSync(file, text);
  const run = spawnSync(process.execPath, [...COMMAND, file, '--out', out, ...more], {
    encoding: 'utf8',
  });
  let files: string[] = [];
  try {
    files = readdirSync(out).sort();
  } catch {
    // Nothing was written.
  }
  return { status: run.status, out, files, said: run.stdout, complained: run.stderr };
}

const plate = (mm: number): Design => {
  const text = { ...newLineText('e1', 'stardos-stencil-700'), text: 'OB', capHeight: 0.5 };
  const plates: Design['plates'] = [{ id: 'p', name: 'Large', diameter: { mm }, quantity: 1 }];
  return handDesign({ title: 'Ottilie & Bastian', elements: [text], plates });
};

/** No router cuts steel. */
const UNFIT = { material: 'stainless-304', thicknessMm: 1.5, process: 'router', use: 'paint' } as const;

describe('the headless command', { timeout: 180_000 }, () => {
  it('writes cut files, sheet and findings, and says so', () => {
    const run = make('good', designText(plate(300)));
    expect(run.complained).toBe('');
    expect(run.status).toBe(0);
    expect(run.files).toHaveLength(4);
    expect(run.files).toEqual(expect.arrayContaining(['findings.json', 'spec-sheet.pdf']));
    const dxf = run.files.find((f) => f.endsWith('.dxf'))!;
    expect(dxf).toMatch(/^Ottilie-Bastian-Large-[0-9a-f]{16}\.dxf$/);
    expect(run.said).toContain(dxf);
    const read = readDxf(readFileSync(join(run.out, dxf), 'utf8'));
    expect(read.entities.at(-1)).toMatchObject({ type: 'CIRCLE', layer: 'RIM', radius: 150 });
    const { plates } = JSON.parse(readFileSync(join(run.out, 'findings.json'), 'utf8')) as {
      plates: { measures: { openings: number } }[];
    };
    expect(plates[0]!.measures.openings).toBe(read.entities.length - 1);
  });

  it('writes the proof when asked to, on the paper asked for, and also of what must not be cut', async () => {
    const run = make('proof', designText(plate(300)), '--proof', '--paper', 'letter');
    expect(run.complained).toBe('');
    for (const name of ['proof.pdf', 'spec-sheet.pdf']) {
      // ANSI Y14.1: size A is 8.5 in x 11 in.
      expect((await readPdf(new Uint8Array(readFileSync(join(run.out, name))))).size, name).toEqual([612, 792]);
    }
    const stopped = make('proof-stopped', designText({ ...plate(300), stock: UNFIT }), '--proof');
    expect(stopped.status).toBe(2);
    expect(stopped.files).toEqual(['findings.json', 'proof.pdf']);
    const wrong = make('proof-wrong', designText(plate(300)), '--paper', 'a5');
    expect(wrong.status).toBe(1);
    expect(wrong.complained).toContain('--paper takes a4 or letter');
  });

  it('puts all plates of the order on sheets, and the whole in one archive', () => {
    const design = plate(300);
    const plates = design.plates.map((p) => ({ ...p, quantity: 5 }));
    const run = make('sheets', designText({ ...design, plates }), '--cut', 'leads');
    expect(run.complained).toBe('');
    expect(run.status).toBe(0);
    const whole = run.files.find((name) => name.endsWith('-path-lead-ins.zip'))!.replace('.zip', '');
    expect(whole).toMatch(/^Ottilie-Bastian-.*[0-9a-f]{16}-path-lead-ins$/);
    const stem = `${whole}-sheet-01`;
    const own = ['.dxf', '.svg', '-cut-list.csv', '-cut-list.pdf'].map((end) => `${stem}${end}`);
    expect(run.files).toEqual(expect.arrayContaining(own));
    const { entities } = readDxf(readFileSync(join(run.out, `${stem}.dxf`), 'utf8'));
    expect(entities.filter((e) => e.layer === 'RIM')).toHaveLength(5);
    const packed = unzipSync(readFileSync(join(run.out, `${whole}.zip`)));
    expect(Object.keys(packed).sort()).toEqual([...own, 'spec-sheet.pdf'].sort());
    for (const name of own) expect(packed[name]).toEqual(new Uint8Array(readFileSync(join(run.out, name))));
    expect(make('odd', designText(design), '--cut', 'all').complained).toContain('net, path, leads or joined');
  });

  it('writes nothing to cut when a finding stops the cut, unless told to', () => {
    const stopped = { ...plate(300), stock: UNFIT };
    const run = make('stopped', designText(stopped));
    expect(run.status).toBe(2);
    expect(run.files).toEqual(['findings.json']);
    expect(run.said).toContain('do not cut');
    const evenSo = make('even-so', designText(stopped), '--even-so');
    expect(evenSo.status).toBe(2);
    expect(evenSo.files).toHaveLength(4);
  });

  it.each([
    ['truncated', designText(plate(300)).slice(0, 200)],
    ['not-json', 'hello'],
    ['empty', ''],
    ['future', designText(plate(300)).replace(/"version": ?\d+/, '"version":99')],
  ])('answers a design that is %s with one line that names the file', (name, text) => {
    const run = make(name, text);
    expect(run.status).toBe(1);
    expect(run.files).toEqual([]);
    expect(run.complained.trim().split('\n')).toHaveLength(1);
    expect(run.complained).toContain(`${name}.json`);
  });

  it('says how it is used, and which file is not there', () => {
    const run = (...args: string[]) => spawnSync(process.execPath, [...COMMAND, ...args], { encoding: 'utf8' });
    expect(run().stderr).toMatch(/^Say which design to make\. Use: npm run -s make/);
    const missing = run('no-such.json', '--out', folder);
    expect(missing.status).toBe(1);
    expect(missing.stderr.trim()).toBe('no-such.json: cannot be read (there is no such file).');
  });
});
