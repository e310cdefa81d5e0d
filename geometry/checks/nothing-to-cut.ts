import type { Finding } from '../findings.ts';
import { said } from '../words/say.ts';
import type { CheckInput } from './input.ts';

/** A plate without a single opening is a round of metal. */
export function checkNothingToCut({ openings }: CheckInput): Finding[] {
  if (openings.length > 0) return [];
  return [
    {
      code: 'nothing-to-cut',
      severity: 'look',
      place: { kind: 'plate' },
      elementIds: [],
      ...said('findings.nothingToCut'),
    },
  ];
}
