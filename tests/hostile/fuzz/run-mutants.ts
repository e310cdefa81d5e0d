import { changesOf, mutate } from './mutate.ts';
import { type Outcome, type Surface, SURFACES } from './surfaces.ts';

/** What went wrong with one mutant: it threw, nobody was told a sentence, or it was taken for something else. */
export interface Trouble {
  readonly kind: 'crash' | 'silent' | 'another';
  readonly why: string;
}

/** Reads one input; undefined when it ended well. */
export function troubleOf(surface: Surface, bytes: Uint8Array, original: Uint8Array | undefined): Trouble | undefined {
  let read: Outcome;
  try {
    read = surface.read(bytes);
  } catch (error) {
    return {
      kind: 'crash',
      why: error instanceof Error ? (error.stack ?? error.message).slice(0, 600) : String(error),
    };
  }
  if ('told' in read) return /^\S.{10,}[.?!]$/su.test(read.told) ? undefined : { kind: 'silent', why: read.told };
  if (surface.sealed !== true || original === undefined) return undefined;
  const sound = surface.read(original);
  return 'taken' in sound && sound.taken === read.taken
    ? undefined
    : { kind: 'another', why: read.taken.slice(0, 200) };
}

/** Mutant number i of a surface. */
export function mutantsOf(
  surface: Surface,
  seed: number,
  count: number,
): { bytes: Uint8Array; original: Uint8Array }[] {
  return changesOf(seed, count).map((changes, i) => {
    const original = surface.seeds[i % surface.seeds.length]!;
    return { bytes: mutate(original, changes), original };
  });
}

export function surfaceNamed(name: string): Surface {
  const found = SURFACES.find((s) => s.name === name);
  if (!found) throw new RangeError(`no surface ${name}`);
  return found;
}
