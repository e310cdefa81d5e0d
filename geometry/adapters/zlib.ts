import { zlibSync } from 'fflate';

/** Bytes packed as RFC 1950 has it; in JavaScript, so that every machine and every browser packs alike to the last bit. */
export function zlibOf(bytes: Uint8Array): Uint8Array {
  return zlibSync(bytes, { level: 9 });
}
