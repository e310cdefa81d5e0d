import { BARRELS } from '../../../geometry/barrel/barrels.ts';
import { saysTrue, VOLUME_SHARE, volumeError } from '../../barrel/volume-notes.ts';
import { rounded, type Claim } from '../claim.ts';

/** Oughtred's formula on inside measures against the named capacity. */
const errors = BARRELS.map((barrel) => ({ barrel, error: Math.abs(volumeError(barrel) ?? NaN) }));

export const VOLUME_CLAIMS: readonly Claim[] = [
  {
    name: 'volumes-agree-or-say-why-not',
    wanted: `all ${BARRELS.length}: within 5 %, or the row says why not, and what it says is so`,
    measure() {
      const agree = errors.filter(({ error }) => error <= VOLUME_SHARE);
      const explained = BARRELS.filter((b) => b.volumeNote !== undefined && saysTrue(b));
      const silent = agree.filter(({ barrel }) => saysTrue(barrel) && barrel.volumeNote === undefined);
      const value = silent.length + explained.length;
      const unit = `of ${BARRELS.length} barrels: ${agree.length} within 5 %, ${explained.length} say truly why not`;
      return Promise.resolve({ value, unit, ok: agree.length > 0 && value === BARRELS.length });
    },
  },
  {
    name: 'largest-volume-error-of-those-that-agree',
    wanted: 'at most 5 %',
    measure() {
      const found = errors.flatMap(({ barrel, error }) => (barrel.volumeNote ? [] : [error]));
      const worst = Math.max(...found);
      const ok = found.length > 0 && worst <= VOLUME_SHARE;
      return Promise.resolve({ value: rounded(100 * worst), unit: `%, of ${found.length} of ${BARRELS.length}`, ok });
    },
  },
];
