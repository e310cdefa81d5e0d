import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rollup } from 'vite';
import { licenceOf } from './licence-text.ts';

/**
 * Adds licences.txt to the built page: name, version and licence text of every package that runs with it. These are the
 * lock file's, and all of which code or a font file went into the bundles, so that nothing shipped is left out. Workers are
 * bundled on their own and before the page: their plugin gathers, the page's writes.
 */
export function licenceNotice(root: string): { readonly page: Plugin; readonly worker: Plugin } {
  const folders = new Set<string>();
  const gather = (bundle: Rollup.OutputBundle) => {
    for (const part of Object.values(bundle)) {
      const files =
        part.type === 'chunk' ? Object.keys(part.modules) : part.originalFileNames.map((name) => join(root, name));
      for (const file of files) {
        const folder = packageFolder(file);
        if (folder !== undefined) folders.add(folder);
      }
    }
  };
  return {
    page: {
      name: 'licence-notice',
      apply: 'build',
      generateBundle(_options, bundle) {
        gather(bundle);
        const all = new Set([...runtimePackages(join(root, '..')), ...folders]);
        const entries = [...all].sort().map(describe);
        this.emitFile({ type: 'asset', fileName: 'licences.txt', source: `${HEAD}\n${entries.join('\n')}` });
      },
    },
    worker: {
      name: 'licence-notice-of-workers',
      apply: 'build',
      generateBundle: (_options, bundle) => gather(bundle),
    },
  };
}

const HEAD = `Bridgehead is under the MIT licence. It is built with the packages and the lettering faces below;
each stays under its own licence.
`;
const RULE = '-'.repeat(78);

/** The innermost package that a file belongs to: `.../node_modules/NAME` or `.../node_modules/@SCOPE/NAME`. */
function packageFolder(file: string): string | undefined {
  const plain = file.replaceAll('\\', '/').replace(/^\0/, '').replace(/\?.*$/, '');
  const found = /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(plain)?.[1];
  return found !== undefined && existsSync(join(found, 'package.json')) ? found : undefined;
}

/** Folders of all packages that the lock file calls neither for development nor optional. */
export function runtimePackages(home: string): string[] {
  const { packages } = JSON.parse(readFileSync(join(home, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { dev?: boolean; optional?: boolean; devOptional?: boolean }>;
  };
  return Object.entries(packages)
    .filter(([path, { dev, optional, devOptional }]) => path !== '' && !dev && !optional && !devOptional)
    .map(([path]) => join(home, path));
}

function describe(folder: string): string {
  const { title, text } = licenceOf(folder);
  return `${RULE}\n${title}\n\n${text}\n`;
}
