import { Inflate } from 'fflate';

/** Deflate makes one byte of at most 1032: from a bite of this size never more than 264 kB come before we look. */
const BITE_BYTES = 256;

export type Inflated = { readonly bytes: Uint8Array } | { readonly problem: 'broken' | 'too-much' };

/** Unpacks what was deflated bite by bite and stops as soon as there is more than `most` bytes, so that no bomb goes off. */
export function inflateCapped(packed: Uint8Array, most: number, dictionary?: Uint8Array): Inflated {
  const parts: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const inflate = new Inflate(dictionary ? { dictionary } : {}, (part, final) => {
    parts.push(part.slice());
    length += part.length;
    ended ||= final;
  });
  try {
    for (let at = 0; at < packed.length; at += BITE_BYTES) {
      inflate.push(packed.subarray(at, at + BITE_BYTES), at + BITE_BYTES >= packed.length);
      if (length > most) return { problem: 'too-much' };
    }
  } catch {
    return { problem: 'broken' };
  }
  if (!ended) return { problem: 'broken' };
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return { bytes };
}
