import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Refusal, reasonOf } from './refusal.ts';

export type Writer = (name: string, content: string | Uint8Array) => Promise<void>;

/**
 * Makes the folder and writes files into it. A file is written whole under another name first, so that a run that is
 * ended leaves no half of one behind.
 */
export async function writerFor(folder: string): Promise<Writer> {
  await mkdir(folder, { recursive: true }).catch((error: unknown) => {
    throw cannotWrite(folder, error);
  });
  return async (name, content) => {
    const path = join(folder, name);
    try {
      await writeFile(`${path}.part`, content);
      await rename(`${path}.part`, path);
    } catch (error) {
      throw cannotWrite(path, error);
    }
  };
}

export function cannotWrite(path: string, error: unknown): Refusal {
  return new Refusal(`${path}: cannot be written (${reasonOf(error)}).`);
}
