import type { Design } from '../../../geometry/design/schema.ts';
import type { History } from '../history.ts';

/** Which entry of the list a design is saved to. The record itself says who it is; its id changes when a copy is made. */
export interface Origin {
  id: string;
  /** Stored last; undefined when nothing is stored yet. */
  revision: number | undefined;
}

export interface Origins {
  /** With this design, by identity, another entry begins. */
  mark(design: Design, origin: Origin): void;
  /** The entry that the present design of a history belongs to; undefined when its beginning is no longer known. */
  of(history: History<Design>): Origin | undefined;
}

/** Undo leads back over the beginning of a design into the one before: each step knows which entry it belongs to. */
export function createOrigins(): Origins {
  const known = new WeakMap<Design, Origin>();
  return {
    mark: (design, origin) => void known.set(design, origin),
    of({ past, present }) {
      const own = known.get(present);
      if (own) return own;
      for (let i = past.length - 1; i >= 0; i--) {
        const step = past[i];
        const origin = step && known.get(step);
        if (origin) return origin;
      }
      return undefined;
    },
  };
}
