import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { KerningTable } from '../geometry/adapters/face.ts';
import { unpackWoff } from '../geometry/adapters/unpack-woff.ts';
import { isWoff } from '../geometry/adapters/woff.ts';
import { motifById } from '../geometry/motifs/catalogue.ts';
import { refused } from '../geometry/sentences/say.ts';
import { FACES, type FaceEntry } from './catalogue.ts';
import { catalogueFace, createFaceStore, loadFacesWith } from './load-faces.ts';
import type { FaceFetcher, FaceOutcome, FacesWanted, LoadedFaces } from './load-faces.ts';

/** Faces in Node (headless command, tests): read from the installed packages. */
export function loadFaces(design: FacesWanted, moreText = ''): Promise<LoadedFaces> {
  return loadFacesWith(fetcher, store, design, moreText);
}

export async function loadFace(faceId: string): Promise<FaceOutcome> {
  const entry = FACES.find((face) => face.id === faceId);
  return entry ? catalogueFace(fetcher, store, entry) : refused('reading.faceUnknown', { name: faceId });
}

export function packageFile(packageName: string, file: string): string {
  return join(dirname(require.resolve(`${packageName}/package.json`)), file);
}

const require = createRequire(import.meta.url);
const store = createFaceStore();

const fetcher: FaceFetcher = {
  motifs: () => Promise.resolve(motifById),
  font: (entry) => plainFile(entry, entry.file),
  further: (entry) => plainFile(entry, entry.furtherFile ?? ''),
  kerning: async (entry) =>
    JSON.parse(await readFile(new URL(`./kerning/${entry.id}.json`, import.meta.url), 'utf8')) as KerningTable,
};

async function plainFile({ packageName }: FaceEntry, file: string): Promise<Uint8Array> {
  const bytes = await readFile(packageFile(packageName, file));
  return (isWoff(bytes) ? unpackWoff(bytes) : undefined) ?? bytes;
}
