import { BARRELS } from '../../../geometry/barrel/barrels.ts';
import { insideLitres } from '../../../geometry/barrel/inside.ts';
import { rounded, type Claim } from '../claim.ts';

/** What agrees within this is taken to be of one cask. */
const SHARE = 0.05;

/** A reason names the measure that it lies with. */
const SAYS_WHY = /\b(heads?|bilge|length|figures)\b/;

/** Oughtred's formula on inside measures against the named capacity: error as a share, undefined where unknown. */
const errors = BARRELS.map((barrel) => {
  const litres = insideLitres(barrel);
  const named = (barrel.litres.least + barrel.litres.most) / 2;
  return { barrel, error: litres === undefined ? undefined : Math.abs(litres / named - 1) };
});

export const VOLUME_CLAIMS: readonly Claim[] = [
  {
    name: 'volumes-agree-or-say-why-not',
    wanted: `all ${BARRELS.length}: within 5 %, or the row says why not`,
    measure() {
      const agree = errors.filter(({ error }) => error !== undefined && error <= SHARE);
      const explained = errors.filter((e) => !agree.includes(e) && SAYS_WHY.test(e.barrel.volumeNote ?? ''));
      const wrong = agree.filter((e) => e.barrel.volumeNote !== undefined);
      const ok = agree.length > 0 && agree.length + explained.length === BARRELS.length && wrong.length === 0;
      const unit = `of ${BARRELS.length} barrels: ${agree.length} within 5 %, ${explained.length} say why not`;
      return Promise.resolve({ value: agree.length + explained.length, unit, ok });
    },
  },
  {
    name: 'largest-volume-error-of-those-that-agree',
    wanted: 'at most 5 %',
    measure() {
      const found = errors.flatMap(({ barrel, error }) => (barrel.volumeNote ? [] : [error ?? Infinity]));
      const worst = Math.max(...found);
      const ok = found.length > 0 && worst <= SHARE;
      return Promise.resolve({ value: rounded(100 * worst), unit: `%, of ${found.length} of ${BARRELS.length}`, ok });
    },
  },
];
