import { execFileSync } from 'node:child_process';

/** What Python's zipfile and hashlib make of an archive. */
export interface ReadElsewhere {
  /** The first file whose check sum is wrong, null for none. */
  readonly firstBad: string | null;
  readonly files: readonly { readonly name: string; readonly bytes: number; readonly sha256: string }[];
}

const SCRIPT = `
import hashlib, json, sys, zipfile
z = zipfile.ZipFile(sys.argv[1])
files = [{"name": n, "bytes": len(z.read(n)), "sha256": hashlib.sha256(z.read(n)).hexdigest()} for n in z.namelist()]
print(json.dumps({"firstBad": z.testzip(), "files": files}))
`;

export function readElsewhere(path: string): ReadElsewhere {
  return JSON.parse(execFileSync('python3', ['-c', SCRIPT, path], { encoding: 'utf8' })) as ReadElsewhere;
}
