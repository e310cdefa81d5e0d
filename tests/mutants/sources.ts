import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const ROOT = join(import.meta.dirname, '../..');

/** Code that works something out: no tables, no sentences, no script that builds a file. */
export function isMutated(file: string): boolean {
  return /^(geometry|fonts)\/.*\.ts$/.test(file) && !/sentences\/|\/data\/|\/drawings\/|build-|catalogue/.test(file);
}

export function mutatedFiles(): readonly string[] {
  return ['geometry', 'fonts'].flatMap(filesUnder).filter(isMutated).sort();
}

/** All tests that see a change: another process than the test's own would run the files as they are on the disk. */
export function testFiles(): readonly string[] {
  const tests = filesUnder('tests').filter((file) => file.endsWith('.test.ts'));
  const seeing = tests.filter((file) => !/child_process|spawn|chromium|worker_threads/.test(textOf(file)));
  // The page's tests reach little of the kernel that the kernel's own do not.
  return seeing.sort(
    (a, b) => Number(/^tests.(web|words)/.test(a)) - Number(/^tests.(web|words)/.test(b)) || (a < b ? -1 : 1),
  );
}

export function textOf(file: string): string {
  return readFileSync(join(ROOT, file), 'utf8');
}

const hashes = new Map<string, string>();
/** A short hash of the file's text; empty where it is gone. */
export function hashOf(file: string): string {
  let hash = hashes.get(file);
  if (hash === undefined) {
    try {
      hash = createHash('sha256').update(textOf(file)).digest('hex').slice(0, 16);
    } catch {
      hash = '';
    }
    hashes.set(file, hash);
  }
  return hash;
}

function filesUnder(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map(
    (name) => `${folder}/${name.replaceAll('\\', '/')}`,
  );
}
