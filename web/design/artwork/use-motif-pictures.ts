import { useEffect, useState } from 'react';
import type { SmallPicture } from '../../worker/artwork-api.ts';
import { artworkWorker } from '../../worker/artwork-client.ts';

/** Pictures of motifs by their ids, one after the other from the worker: a drawing takes too long for the page itself. */
export function useMotifPictures(ids: readonly string[]): Readonly<Record<string, SmallPicture>> {
  const [pictures, setPictures] = useState<Readonly<Record<string, SmallPicture>>>(known);
  useEffect(() => {
    let gone = false;
    void (async () => {
      for (const id of ids) {
        if (known[id] === undefined) {
          const ask = (): Promise<SmallPicture> => artworkWorker().motif(id, {});
          // A file dialog that closes ends the worker; without a picture the name still says which motif it is.
          const picture = await ask()
            .catch(ask)
            .catch(() => undefined);
          if (picture) known = { ...known, [id]: picture };
        }
        if (gone) return;
        setPictures(known);
      }
    })();
    return () => {
      gone = true;
    };
  }, [ids]);
  return pictures;
}

/** Drawn once a visit. */
let known: Readonly<Record<string, SmallPicture>> = {};
