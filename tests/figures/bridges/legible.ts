import { READ_FACES, legibility } from '../../legible/measure.ts';
import { whyNoReader } from '../../legible/read-lines.ts';
import { type Claim, rounded } from '../claim.ts';

/** Percentage points by which bridges may make the reader err more. */
const MOST_WORSE = 1;

/** What a reader made for print makes of two hundred words in ten faces, with bridges and without. */
export const LEGIBLE_CLAIMS: readonly Claim[] = [
  {
    name: 'character-errors-bridged-over-unbridged',
    wanted: `at most ${MOST_WORSE} percentage point`,
    async measure() {
      const missing = whyNoReader();
      if (missing) return { value: 'not measured', unit: `: ${missing}`, ok: true };
      let [characters, without, bridged] = [0, 0, 0];
      const faces: string[] = [];
      for (const face of READ_FACES) {
        const read = await legibility(face);
        characters += read.characters;
        without += read.wrongUnbridged;
        bridged += read.wrongBridged;
        faces.push(
          `${face} ${percent(read.wrongUnbridged, read.characters)} to ${percent(read.wrongBridged, read.characters)}`,
        );
      }
      const worse = (100 * (bridged - without)) / characters;
      return {
        value: rounded(worse),
        unit: `points, from ${percent(without, characters)} % unbridged to ${percent(bridged, characters)} % bridged (${faces.join(', ')})`,
        ok: characters > 0 && worse <= MOST_WORSE,
      };
    },
  },
];

function percent(wrong: number, of: number): string {
  return ((100 * wrong) / of).toFixed(2);
}
