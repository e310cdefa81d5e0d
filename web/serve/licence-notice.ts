import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Plugin, Rollup } from 'vite';

/**
 * Adds licences.txt to the built page: name, version and licence text of every package of which code or a font file
 * went into it. Gathered from the bundles themselves, so that nothing shipped is left out. Workers are bundled on
 * their own and before the page: their plugin gathers, the page's writes.
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
        const entries = [...folders].sort().map((folder) => describe(root, folder));
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

function describe(root: string, folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string;
    version: string;
    license?: string;
  };
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file
    ? readFileSync(join(folder, file), 'utf8').trim()
    : `(no licence file in ${relative(root, folder)})`;
  return `${RULE}\n${name} ${version}: ${license ?? 'see below'}\n\n${text}\n`;
}
