import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Plugin } from 'vite';
import { builtFiles, SHOPS_OWN } from './built-files.ts';

const WORKER = 'offline-worker.js';

/**
 * After the page is built, builds web/serve/offline/worker.ts with the list of all that was built, the SHA-256 of each (in
 * base64; none for what a shop edits), and a mark of all: a change of one letter anywhere makes a newer version.
 */
export function offlineBuild(root: string): Plugin {
  let outDir = '';
  return {
    name: 'offline-worker',
    apply: 'build',
    configResolved: (config) => {
      outDir = config.build.outDir.startsWith('/') ? config.build.outDir : join(config.root, config.build.outDir);
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        const whole = createHash('sha256');
        const files = builtFiles(outDir, [WORKER]).map((file): [string, string] => {
          const bytes = readFileSync(join(outDir, file));
          whole.update(`${file}\n`).update(bytes);
          return [file, SHOPS_OWN.includes(file) ? '' : createHash('sha256').update(bytes).digest('base64')];
        });
        const version = whole.digest('hex').slice(0, 16);
        await build({
          configFile: false,
          root,
          logLevel: 'warn',
          define: { BUILT: JSON.stringify({ version, files: Object.fromEntries(files) }) },
          build: {
            outDir,
            emptyOutDir: false,
            copyPublicDir: false,
            target: 'es2023',
            lib: {
              entry: join(root, 'serve', 'offline', 'worker.ts'),
              formats: ['iife'],
              name: 'offline',
              fileName: () => WORKER,
            },
          },
        });
      },
    },
  };
}
