import { execFile, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { Resvg } from '@resvg/resvg-js';
import { joinBoxes, ringBox } from '../../geometry/measure/ring.ts';
import type { Region } from '../../geometry/shapes.ts';
import { pathData } from '../specimen/set-line.ts';

// Tesseract (Debian's tesseract-ocr, English data) as a reader that knows nothing of bridges.

const CAP_PX = 40;
const run = promisify(execFile);

/** Installs Debian's tesseract where it is missing and we may. Why it can't be had, or undefined. */
export function whyNoReader(): string | undefined {
  if (hasReader()) return undefined;
  if (process.platform === 'linux') {
    const root = process.getuid?.() === 0;
    const apt = (args: string[]) =>
      spawnSync(root ? 'apt-get' : 'sudo', root ? args : ['-n', 'apt-get', ...args], {
        stdio: 'ignore',
        timeout: 5 * 60_000,
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      });
    apt(['update']);
    apt(['install', '-y', '--no-install-recommends', 'tesseract-ocr', 'tesseract-ocr-eng']);
  }
  return hasReader() ? undefined : 'tesseract with English data is not on this machine and could not be installed';
}

function hasReader(): boolean {
  const listed = spawnSync('tesseract', ['--list-langs'], { encoding: 'utf8' });
  return listed.status === 0 && /^eng$/m.test(`${listed.stdout}\n${listed.stderr}`);
}

/** What the reader makes of each line of openings, black on white, capitals 40 pixels high. In: mm, y up. */
export async function readLines(lines: readonly (readonly Region[])[], capMm: number): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bridgehead-legible-'));
  try {
    const names = lines.map((regions, i) => {
      const name = join(folder, `${i}.png`);
      writeFileSync(name, picture(regions, capMm));
      return name;
    });
    const list = join(folder, 'list.txt');
    writeFileSync(list, `${names.join('\n')}\n`);
    const { stdout } = await run('tesseract', [list, '-', '-l', 'eng', '--psm', '7'], {
      env: { ...process.env, OMP_THREAD_LIMIT: '1' },
      maxBuffer: 16 * 1024 * 1024,
    });
    const read = stdout.split('\f').slice(0, lines.length);
    return lines.map((_, i) => (read[i] ?? '').replace(/\s+/g, ' ').trim());
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function picture(regions: readonly Region[], capMm: number): Buffer {
  const box = joinBoxes(regions.map((r) => ringBox(r.outer)));
  const room = 0.5 * capMm;
  const [w, h] = [box.maxX - box.minX + 2 * room, box.maxY - box.minY + 2 * room];
  const view = `${box.minX - room} ${-box.maxY - room} ${w} ${h}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view}"><rect x="${box.minX - room}" y="${-box.maxY - room}" width="${w}" height="${h}" fill="#fff"/><path d="${pathData(regions)}" fill-rule="evenodd"/></svg>`;
  return new Resvg(svg, { fitTo: { mode: 'width', value: Math.round((w * CAP_PX) / capMm) } }).render().asPng();
}
