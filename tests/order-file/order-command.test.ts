import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { designText } from '../../geometry/design/write-design.ts';
import { flippedAt, resealed } from './damages.ts';
import { approved, madeOrder, smallDesign } from './sound-order.ts';

const folder = mkdtempSync(join(tmpdir(), 'order-command-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(command: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', command, ...args], {
    encoding: 'utf8',
  });
  return { status, said: stdout, complained: stderr };
}

const check = (...args: string[]) => run('geometry/command/order-command.ts', 'check', ...args);

function written(name: string, bytes: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

describe('the commands for orders', { timeout: 180_000 }, () => {
  it('write one that holds what was written beside it, and find it sound', () => {
    const out = join(folder, 'out');
    const design = smallDesign('OB');
    const made = run(
      'geometry/command/make-command.ts',
      written('design.json', designText(design)),
      '--out',
      out,
      '--order',
    );
    expect(made).toMatchObject({ status: 0, complained: '' });
    const name = readdirSync(out).find((file) => file.endsWith('-order.zip'))!;
    expect(made.said).toContain(name);
    const checked = check(join(out, name));
    expect(checked).toMatchObject({ status: 0, complained: '' });
    expect(checked.said).toMatch(
      /Order verified: 6 files.*\n.*2 files to cut by come out the same.*\nThe same of proof\.pdf, spec-sheet\.pdf, findings\.json\.\nNot signed.*\nApproved by O\. Marrow/,
    );

    const zip = readFileSync(join(out, name));
    const harmed = check(written('harmed.zip', flippedAt(zip, zip.length >> 1)));
    expect(harmed.status).toBe(2);
    expect(harmed.said).toMatch(/Not as it was written:\n {2}“[\w-]+\.\w+” (is damaged|unpacks|is not as it was)/);
    // A book of the shop's own that asks for other bridges.
    const stock = readFileSync('geometry/stock/starting-stock.json', 'utf8');
    const wider = stock.replaceAll(/"bridge": \{(\s*)"mm": [\d.]+/g, '"bridge": {$1"mm": 5');
    expect(wider).not.toBe(stock);
    const elsewhere = check(join(out, name), '--stock', written('stock.json', wider));
    expect(elsewhere).toMatchObject({ status: 2, complained: '' });
    expect(elsewhere.said).toContain('rules of another stock file');
  });

  it('find a cut file that was changed and listed anew', async () => {
    const { bytes, file } = resealed(await madeOrder(smallDesign('OB')));
    const checked = check(written('resealed.zip', bytes));
    expect(checked.status).toBe(2);
    expect(checked.said).toContain(`“${file}” is not what comes out when the design is made again`);
  });

  it('say what they cannot read, and write no order for what was not approved', () => {
    expect(check(join(folder, 'none.zip'))).toMatchObject({ status: 1, said: '' });
    expect(check(written('letter.zip', 'Dear shop'))).toMatchObject({
      status: 1,
      said: '',
      complained: expect.stringMatching(/letter\.zip: This is no order: the file is no ZIP/) as string,
    });
    expect(run('geometry/command/order-command.ts').status).toBe(1);
    const stale = approved(smallDesign('OB'), 'f'.repeat(64));
    const file = written('stale.json', designText(stale));
    const made = run('geometry/command/make-command.ts', file, '--out', join(folder, 'stale'), '--order');
    expect(made.status).toBe(1);
    expect(made.complained).toMatch(/what was approved is another design/);
    expect(readdirSync(join(folder, 'stale')).some((name) => name.endsWith('.zip'))).toBe(false);
  });
});
