import { type Cache, createCache } from '../geometry/cache.ts';
import type { Face, FaceSource, KerningTable } from '../geometry/adapters/face.ts';
import { bytesOfBase64, contentKey, ownFaceId } from '../geometry/design/own-face-id.ts';
import { readTrueType } from '../geometry/adapters/truetype.ts';
import { refused } from '../geometry/sentences/say.ts';
import type { Refused } from '../geometry/sentences/wording.ts';
import { faceEntry } from './catalogue.ts';
import type { FaceEntry } from './catalogue.ts';
import { wantsFurther, withFurther } from './further-letters.ts';

/** What of a design the loader looks at; a whole Design fits. */
export interface FacesWanted {
  readonly elements: readonly { readonly face?: string; readonly kind: string; readonly text?: string }[];
  readonly ownFaces: readonly { readonly id: string; readonly name: string; readonly data: string }[];
}

export interface FaceProblem extends Refused {
  readonly faceId: string;
}

export interface LoadedFaces {
  readonly faces: FaceSource;
  readonly problems: readonly FaceProblem[];
}

/** How the files of a catalogue face are got: from disk or over the wire. Rejections are turned into problems. */
export interface FaceFetcher {
  /** The plain font file, unpacked. */
  font(entry: FaceEntry): Promise<Uint8Array>;
  /** The file of further letters; only asked for when the entry names one. */
  further(entry: FaceEntry): Promise<Uint8Array>;
  kerning(entry: FaceEntry): Promise<KerningTable>;
  /** Our drawings, at least when the design uses one. */
  motifs(design: FacesWanted): Promise<FaceSource['motif']>;
}

export type FaceOutcome = { readonly face: Face } | Refused;

/**
 * All faces a design uses, each read once for each store; what could not be had is said, the rest is there. A face's
 * further letters (Polish, Hungarian, Turkish ...) come when a text needs them; moreText: what else will be written.
 */
export async function loadFacesWith(
  fetcher: FaceFetcher,
  store: FaceStore,
  design: FacesWanted,
  moreText = '',
): Promise<LoadedFaces> {
  const loaded = new Map<string, Face>();
  const problems: FaceProblem[] = [];
  const [motif, outcomes] = await Promise.all([
    fetcher.motifs(design),
    Promise.all(
      faceIdsOf(design).map(async (faceId) => ({
        faceId,
        outcome: await outcomeOf(fetcher, store, design, faceId, moreText),
      })),
    ),
  ]);
  for (const { faceId, outcome } of outcomes) {
    if ('face' in outcome) loaded.set(faceId, outcome.face);
    else problems.push({ faceId, ...outcome });
  }
  return { faces: { get: (faceId) => loaded.get(faceId), motif }, problems };
}

/** Faces already read, so that a second design, or the next keystroke, does not read them again. */
export type FaceStore = Cache<Promise<FaceOutcome>>;

/** Holds more faces than the catalogue has, so that a long session with many fonts of one's own does not grow. */
export const createFaceStore = (): FaceStore => createCache(200);

/** One face of the catalogue, of its first file. */
export function catalogueFace(fetcher: FaceFetcher, store: FaceStore, entry: FaceEntry): Promise<FaceOutcome> {
  return kept(store, entry.id, () => fetchFace(fetcher, entry));
}

/** One face of the catalogue with all letters of these texts that it has. */
async function faceFor(
  fetcher: FaceFetcher,
  store: FaceStore,
  entry: FaceEntry,
  texts: readonly string[],
): Promise<FaceOutcome> {
  const outcome = await catalogueFace(fetcher, store, entry);
  if ('problem' in outcome || entry.furtherFile === undefined || !wantsFurther(outcome.face, texts)) return outcome;
  return kept(store, `${entry.id}+further`, () => fetchFurther(fetcher, entry, outcome.face));
}

/** A failed fetch is not kept: the next call tries again. */
function kept(store: FaceStore, key: string, fetched: () => Promise<FaceOutcome>): Promise<FaceOutcome> {
  return store.getOrMake(key, () => {
    const outcome = fetched();
    void outcome.then((result) => {
      if ('problem' in result) store.delete(key);
    });
    return outcome;
  });
}

/** Ids of the faces that the texts of a design are set in, each once, in order of use. */
function faceIdsOf(design: FacesWanted): string[] {
  return [...new Set(design.elements.flatMap((element) => (element.face === undefined ? [] : [element.face])))];
}

async function outcomeOf(
  fetcher: FaceFetcher,
  store: FaceStore,
  design: FacesWanted,
  faceId: string,
  moreText: string,
): Promise<FaceOutcome> {
  const own = design.ownFaces.find((face) => face.id === faceId);
  if (own) {
    return store.getOrMake(contentKey(own), () => ownFaceOf(own));
  }
  const entry = faceEntry(faceId);
  if (entry) {
    const texts = design.elements.flatMap((e) => (e.face === faceId && e.text !== undefined ? [e.text] : []));
    return faceFor(fetcher, store, entry, [...texts, moreText]);
  }
  return faceId.startsWith('own:') ? refused('reading.faceGone') : refused('reading.faceUnknown', { name: faceId });
}

/**
 * The large reader, which knows every kind of font file, comes only when one of a person's own is to be read. The face is
 * called by its data whatever the design calls it: outlines and distances are kept by that.
 */
async function ownFaceOf(own: {
  readonly id: string;
  readonly name: string;
  readonly data: string;
}): Promise<FaceOutcome> {
  const { readFace } = await import('../geometry/adapters/opentype.ts');
  const bytes = bytesOfBase64(own.data);
  const outcome = bytes ? readFace(ownFaceId(bytes), bytes) : refused('reading.faceData');
  return 'face' in outcome ? outcome : refusedFor(own.name, outcome);
}

async function fetchFace(fetcher: FaceFetcher, entry: FaceEntry): Promise<FaceOutcome> {
  try {
    const [bytes, kerning] = await Promise.all([fetcher.font(entry), fetcher.kerning(entry)]);
    const outcome =
      readTrueType(entry.id, entry.name, bytes, kerning, entry.joins) ??
      (await import('../geometry/adapters/opentype.ts')).readFace(entry.id, bytes, kerning, entry.joins);
    return 'face' in outcome ? { face: { ...outcome.face, name: entry.name } } : refusedFor(entry.name, outcome);
  } catch {
    return refused('reading.faceFetch', { name: entry.name });
  }
}

async function fetchFurther(fetcher: FaceFetcher, entry: FaceEntry, face: Face): Promise<FaceOutcome> {
  try {
    const bytes = await fetcher.further(entry);
    const outcome = readTrueType(entry.id, entry.name, bytes, NO_KERNING, entry.joins, face);
    if (outcome === undefined || 'problem' in outcome) return refused('reading.faceFetch', { name: entry.name });
    return { face: withFurther(face, outcome.face) };
  } catch {
    return refused('reading.faceFetch', { name: entry.name });
  }
}

const NO_KERNING: KerningTable = { unitsPerEm: 1000, pairs: {} };

/** Says which face it was. */
function refusedFor(name: string, { words }: Refused): Refused {
  return refused('reading.faceNamed', { name, problem: words });
}
