import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Debian's python3-ezdxf; another Python first on the path need not have it. */
const PYTHON = '/usr/bin/python3';

export interface EzdxfRead {
  readonly errors: number;
  readonly fixes: number;
  readonly insunits: number;
  readonly measurement: number;
  readonly version: string;
  readonly extmin: readonly number[];
  readonly extmax: readonly number[];
  readonly layers: readonly string[];
  readonly entities: readonly {
    readonly kind: string;
    readonly layer: string;
    readonly closed?: boolean;
    readonly radius?: number;
    readonly points?: readonly (readonly [number, number, number])[];
  }[];
}

/** Undefined, with the reason printed, when this machine has no ezdxf. */
export function ezdxfVersion(): string | undefined {
  const run = spawnSync(PYTHON, ['-c', 'import ezdxf; print(ezdxf.__version__)'], { encoding: 'utf8' });
  if (run.status === 0) return run.stdout.trim();
  console.warn(`ezdxf checks skipped: ${PYTHON} has no ezdxf (apt-get install python3-ezdxf)`);
  return undefined;
}

/** Reads a DXF with ezdxf and runs its audit. */
export function readWithEzdxf(dxf: string): EzdxfRead {
  const folder = mkdtempSync(join(tmpdir(), 'ezdxf-'));
  try {
    const file = join(folder, 'plate.dxf');
    writeFileSync(file, dxf);
    const run = spawnSync(PYTHON, ['-c', SCRIPT, file], { encoding: 'utf8', maxBuffer: 1 << 28 });
    if (run.status !== 0) throw new Error(`ezdxf could not read the file: ${run.stderr}`);
    return JSON.parse(run.stdout) as EzdxfRead;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const SCRIPT = `
import sys, json, ezdxf
doc = ezdxf.readfile(sys.argv[1])
audit = doc.audit()
entities = []
for e in doc.modelspace():
    row = {'kind': e.dxftype(), 'layer': e.dxf.layer}
    if e.dxftype() == 'LWPOLYLINE':
        row['closed'] = bool(e.closed)
        row['points'] = [[p[0], p[1], p[2]] for p in e.get_points('xyb')]
    if e.dxftype() == 'CIRCLE':
        row['radius'] = e.dxf.radius
    entities.append(row)
print(json.dumps({
    'errors': len(audit.errors), 'fixes': len(audit.fixes), 'insunits': doc.header['$INSUNITS'],
    'measurement': doc.header['$MEASUREMENT'], 'version': doc.dxfversion,
    'extmin': list(doc.header['$EXTMIN']), 'extmax': list(doc.header['$EXTMAX']),
    'layers': [l.dxf.name for l in doc.layers], 'entities': entities}))
`;
