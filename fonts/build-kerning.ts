import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { FACES } from './catalogue.ts';
import { kerningTable, openFont } from './kerning-by-fontkit.ts';
import { packageFile } from './node-faces.ts';

/**
 * Writes fonts/kerning/<face>.json for every face of the catalogue: `npx tsx fonts/build-kerning.ts`.
 * Run it when a face is added or its package changes; tests compare the tables with a fresh reading.
 */
mkdirSync(new URL('./kerning/', import.meta.url), { recursive: true });
for (const face of FACES) {
  const table = kerningTable(openFont(readFileSync(packageFile(face.packageName, face.file))));
  const json = `${JSON.stringify(table, null, 2)}\n`;
  writeFileSync(new URL(`./kerning/${face.id}.json`, import.meta.url), json);
  process.stdout.write(`${face.id}: ${json.length} bytes\n`);
}
