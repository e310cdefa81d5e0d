import { spawnSync } from 'node:child_process';

/** Cut files in an archive by their names, and those among all of its files whose bytes do not give their CRC-32. */
export type Packed = { readonly files: number; readonly damaged: number } | { readonly absent: string };

const SCRIPT = `
import json, sys, zipfile
damaged = 0
with zipfile.ZipFile(sys.argv[1]) as archive:
    for name in archive.namelist():
        try:
            with archive.open(name) as file:
                while file.read(1 << 16):
                    pass
        except zipfile.BadZipFile:
            damaged += 1
    files = len({name for name in archive.namelist() if name.endswith(('.dxf', '.svg'))})
print(json.dumps({'files': files, 'damaged': damaged}))
`;

/** Reads every byte of it by the zipfile module of Python's standard library, which holds each file against its CRC-32. */
export function readByPython(archive: string): Packed {
  const run = spawnSync('python3', ['-c', SCRIPT, archive], { encoding: 'utf8' });
  if (run.error) return { absent: 'no python3 on this machine' };
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout) as Packed;
}
