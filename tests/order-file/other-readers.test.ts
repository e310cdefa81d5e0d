import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { readElsewhere } from './read-elsewhere.ts';
import { madeOrder, type MadeOrder, smallDesign } from './sound-order.ts';

/** Programs that are not ours open an order and find in it what its manifest says. */

const folder = mkdtempSync(join(tmpdir(), 'order-'));
const path = join(folder, 'order.zip');
let order: MadeOrder;
beforeAll(async () => {
  order = await madeOrder(smallDesign('OB'));
  writeFileSync(path, order.bytes);
});
afterAll(() => rmSync(folder, { recursive: true }));

const canRun = (program: string, ...args: string[]) => {
  const there = spawnSync(program, args).status === 0;
  if (!there) console.log(`skipped: no ${program} on this machine`);
  return there;
};

describe('other readers', () => {
  it.runIf(canRun('python3', '--version'))('Python’s zipfile and hashlib find the files of the manifest', () => {
    const read = readOrderFile(order.bytes);
    if (read.kind !== 'sound') throw new Error('unsound');
    const elsewhere = readElsewhere(path);
    expect(elsewhere.firstBad).toBeNull();
    expect(elsewhere.files.filter(({ name }) => name !== 'manifest.json')).toEqual(
      read.manifest.files.map(({ name, bytes, sha256 }) => ({ name, bytes, sha256 })),
    );
  });

  it.runIf(canRun('unzip', '-v') && canRun('sha256sum', '--version'))(
    'unzip tests it, and sha256sum agrees with the manifest on every file',
    () => {
      expect(spawnSync('unzip', ['-tqq', path]).status).toBe(0);
      execFileSync('unzip', ['-qq', path, '-d', join(folder, 'out')]);
      const manifest = JSON.parse(readFileSync(join(folder, 'out', 'manifest.json'), 'utf8')) as {
        files: { name: string; sha256: string }[];
      };
      expect(manifest.files).toHaveLength(7);
      const list = manifest.files.map(({ name, sha256 }) => `${sha256}  ${name}\n`).join('');
      const run = spawnSync('sha256sum', ['--check', '--strict'], {
        cwd: join(folder, 'out'),
        input: list,
        encoding: 'utf8',
      });
      expect(run.status, run.stdout).toBe(0);
    },
  );

  it.runIf(canRun('python3', '--version'))('packed again by Python, it is said to be packed again', () => {
    const again = join(folder, 'again.zip');
    const script = [
      'import sys, zipfile',
      'old = zipfile.ZipFile(sys.argv[1])',
      'new = zipfile.ZipFile(sys.argv[2], "w", zipfile.ZIP_DEFLATED)',
      'for name in old.namelist(): new.writestr(name, old.read(name))',
      'new.close()',
    ].join('\n');
    execFileSync('python3', ['-c', script, path, again]);
    const read = readOrderFile(new Uint8Array(readFileSync(again)));
    expect(read.kind === 'unsound' && read.faults.map((f) => f.words.key)).toEqual(['orderFault.repacked']);
  });
});
