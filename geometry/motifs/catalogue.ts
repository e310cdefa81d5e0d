import type { MotifEntry } from './motif.ts';
import { STAR } from './star.ts';

/** All motifs, as they are offered. */
export const MOTIFS: readonly MotifEntry[] = [STAR];

export function motifById(id: string): MotifEntry | undefined {
  return MOTIFS.find((m) => m.id === id);
}
