import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { folderArrows, folderOf, fullFolders, mutualFolders } from './folders.ts';
import { FILE_BUDGET, LINE_BUDGET } from './house-rules.ts';
import { importCycles, importsOf, readSources } from './read-imports.ts';

/** Prints how the house is arranged: folders with files and lines, who imports whom, and what breaks a rule. */

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const kept = execFileSync('git', ['ls-files'], { cwd: ROOT, encoding: 'utf8' }).split('\n').filter(Boolean);
/** Product code: no words, no data. */
const product = kept.filter(
  (path) =>
    /^(geometry|web|fonts)\//.test(path) &&
    /\.(ts|tsx|mts|mjs|css)$/.test(path) &&
    !/^(web\/words\/..\/.*|geometry\/sentences\/.*-en)\.ts$/.test(path),
);
const linesOf = (path: string) => readFileSync(join(ROOT, path), 'utf8').split('\n').length - 1;
const imports = readSources(ROOT, ['geometry', 'fonts', 'web']).flatMap(importsOf);

const folders = new Map<string, { files: number; lines: number }>();
for (const path of product) {
  const at = folders.get(folderOf(path)) ?? { files: 0, lines: 0 };
  folders.set(folderOf(path), { files: at.files + 1, lines: at.lines + linesOf(path) });
}
const reached = (folder: string) => [
  ...new Set(
    imports
      .filter((one) => one.kind === 'file' && folderOf(one.from) === folder && folderOf(one.to) !== folder)
      .map((one) => folderOf(one.to)),
  ),
];
for (const [folder, { files, lines }] of [...folders].sort(([a], [b]) => (a < b ? -1 : 1))) {
  console.log(`${folder}: ${files} files, ${lines} lines; imports ${reached(folder).sort().join(', ') || 'nothing'}`);
}
const inWeb = new Set(kept.filter((path) => /^web\/[^/]+\//.test(path)).map((path) => path.split('/')[1]));
console.log(`\nfolders directly in web/: ${inWeb.size}`);
console.log(`lines of product code: ${product.reduce((sum, path) => sum + linesOf(path), 0)}`);
console.log(`arrows between folders of one parent: ${folderArrows(imports).length}`);
console.log(`folders that import each other: ${mutualFolders(imports).length}`);
console.log(`circles of files: ${importCycles(imports).length}`);
console.log(`folders with more than ${FILE_BUDGET} files: ${fullFolders(kept, FILE_BUDGET).length}`);
console.log(`files over ${LINE_BUDGET} lines: ${product.filter((path) => linesOf(path) > LINE_BUDGET).length}`);
for (const sentence of [...mutualFolders(imports), ...fullFolders(kept, FILE_BUDGET)]) console.log(sentence);
