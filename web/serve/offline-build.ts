import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Plugin } from 'vite';

const WORKER = 'offline-worker.js';

/**
 * After the page is built, builds web/serve/offline/worker.ts with the list of all that was built and a mark of its content:
 * a change of one letter anywhere makes a newer version.
 */
export function offlineBuild(root: string): Plugin {
  let outDir = '';
  return {
    name: 'offline-worker',
    apply: 'build',
    configResolved: (config) => {
      outDir = join(config.root, config.build.outDir);
      if (config.build.outDir.startsWith('/')) outDir = config.build.outDir;
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        const files = readdirSync(outDir, { recursive: true, withFileTypes: true })
          .filter((entry) => entry.isFile() && entry.name !== WORKER && !entry.name.endsWith('.map'))
          .map((entry) =>
            join(entry.parentPath, entry.name)
              .slice(outDir.length + 1)
              .replaceAll('\\', '/'),
          )
          .sort();
        const hash = createHash('sha256');
        for (const file of files) hash.update(`${file}\n`).update(readFileSync(join(outDir, file)));
        const version = hash.digest('hex').slice(0, 16);
        await build({
          configFile: false,
          root,
          logLevel: 'warn',
          define: { BUILT: JSON.stringify({ version, files }) },
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
