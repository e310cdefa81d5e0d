import { open, readFile, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { createZip } from '../adapters/zip-stream.ts';
import { cannotWrite } from './write-files.ts';

/** Files of a folder into one ZIP in it, in the order given; one file at a time is held in memory. */
export async function zipFolder(folder: string, name: string, files: readonly string[]): Promise<void> {
  const path = join(folder, name);
  try {
    const out = await open(`${path}.part`, 'w');
    try {
      let pieces: Uint8Array[] = [];
      const zip = createZip((piece) => pieces.push(piece));
      const flush = async () => {
        for (const piece of pieces) await out.write(piece);
        pieces = [];
      };
      for (const file of files) {
        zip.add(file, await readFile(join(folder, file)));
        await flush();
      }
      zip.end();
      await flush();
    } finally {
      await out.close();
    }
    await rename(`${path}.part`, path);
  } catch (error) {
    throw cannotWrite(path, error);
  }
}
