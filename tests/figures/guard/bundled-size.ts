import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';

const ENTRY = '/entry.js';
const WASM = '/none.wasm';

/** What a browser would load for it: bundled and minified as the page is, its wasm beside it, kB after gzip -9. */
export async function bundledKB(code: string, wasm?: string): Promise<number> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    plugins: [
      {
        name: 'entry',
        resolveId: (id) => (id.endsWith(ENTRY) ? ENTRY : id.endsWith('.wasm') ? WASM : undefined),
        load: (id) => (id === ENTRY ? code : id === WASM ? 'export default "";' : undefined),
      },
    ],
    build: { write: false, minify: true, lib: { entry: ENTRY, formats: ['es'], fileName: 'out' } },
  });
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((b) => ('output' in b ? b.output : []));
  // The builder writes the wasm into the script as text; a page loads it as the file that it is.
  const scripts = outputs.map((o) =>
    'code' in o ? o.code.replace(/data:application\/wasm;base64,[\w+/=]*/g, '') : '',
  );
  const files = wasm === undefined ? [] : [readFileSync(inPackage(wasm))];
  return (
    Math.round([...scripts, ...files].reduce((sum, data) => sum + gzipSync(data, { level: 9 }).length, 0) / 100) / 10
  );
}

/** A file of a package, whether or not the package lets it be imported. */
function inPackage(path: string): string {
  const [name = '', ...rest] = path.split('/');
  let folder = dirname(createRequire(import.meta.url).resolve(name));
  while (!folder.endsWith(`node_modules/${name}`)) folder = dirname(folder);
  return join(folder, ...rest);
}
