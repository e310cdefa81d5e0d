import type { Region } from '../../shapes.ts';
import type { KerfPath } from '../plate/kerf-paths.ts';
import type { Lead } from '../plate/lead-ins.ts';

/** A path, and the ways in that it may be begun by. */
export interface WorkPass extends KerfPath {
  readonly leads: readonly Lead[];
  readonly lengthMm: number;
}

/** One opening: pieces left inside it first, itself last. */
export interface WorkOpening {
  readonly id: string;
  readonly word: string;
  readonly isLoose: boolean;
  /** Where the beam's middle may be. */
  readonly room: Region;
  readonly inner: readonly WorkPass[];
  readonly outer: WorkPass;
}
