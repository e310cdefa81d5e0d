import type { Region } from '../../shapes.ts';
import type { KerfPath } from '../plate/kerf-paths.ts';
import type { Lead } from '../plate/lead-ins.ts';

/** A path, and the lead-ins that it may be begun by. */
export interface PreparedPass extends KerfPath {
  readonly leads: readonly Lead[];
  readonly lengthMm: number;
}

/** One opening: pieces left inside it first, itself last. */
export interface PreparedOpening {
  readonly id: string;
  readonly word: string;
  readonly isLoose: boolean;
  /** Where the beam's middle may be. */
  readonly inset: Region;
  readonly inner: readonly PreparedPass[];
  readonly outer: PreparedPass;
}
