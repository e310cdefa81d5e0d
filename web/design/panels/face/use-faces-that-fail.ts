import { useEffect, useRef, useState } from 'react';
import type { Design } from '../../../../geometry/design/schema.ts';
import { usePage, usePlates } from '../../../page/page-context.ts';
import { setFace } from '../../../state/actions/elements/set-face.ts';

/** A design that changes is left alone until it has rested so long. */
const REST_MS = 600;

/**
 * Faces in which these very words cannot be cut at this size, found by making the plate in each of the first few, one
 * after the other, while nothing else is worked out. Those that were not tried yet count as holding.
 */
export function useFacesThatFail(
  design: Design,
  candidates: readonly string[],
  wanted: number,
  elementId: string | undefined,
): ReadonlySet<string> {
  const { client } = usePage();
  const busy = usePlates((s) => s.busy);
  const [failed, setFailed] = useState<ReadonlySet<string>>(NONE);
  // what decides is everything but the faces themselves
  const cut = [design.head, design.surface, design.stock, design.plates, elementId, textsOf(design)];
  const key = JSON.stringify(cut);
  const tried = useRef<{ key: string; held: Map<string, boolean> }>({ key, held: new Map() });

  useEffect(() => {
    if (tried.current.key !== key) {
      tried.current = { key, held: new Map() };
      setFailed(NONE);
    }
    if (busy) return;
    let gone = false;
    const { held } = tried.current;
    const tryAll = async (): Promise<void> => {
      let holding = 0;
      for (const face of candidates) {
        if (holding >= wanted) return;
        if (!held.has(face)) {
          const plate = await client.picture(setFace(design, face, elementId).design);
          if (gone) return;
          if (!plate) return;
          const holds = plate.verdict !== 'stop';
          held.set(face, holds);
          if (!holds) setFailed(new Set([...held].flatMap(([id, does]) => (does ? [] : [id]))));
        }
        if (held.get(face) === true) holding++;
      }
    };
    const timer = setTimeout(() => void tryAll(), REST_MS);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [key, busy, candidates, wanted, elementId, client, design]);

  return failed;
}

const NONE: ReadonlySet<string> = new Set();

function textsOf({ elements }: Design): unknown {
  return elements.map((e) => ('face' in e ? { ...e, face: '' } : e));
}
