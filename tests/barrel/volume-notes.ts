import { VOLUME_NOTES, type Barrel, type Published } from '../../geometry/barrel/barrels.ts';
import { insideLitres, outsideOf } from '../../geometry/barrel/inside.ts';

/** The table's figures are weak; what agrees within this is taken to be of one cask. */
export const VOLUME_SHARE = 0.05;

/** Litres by a barrel's published measures against its named capacity: error as a share; undefined where unknown. */
export function volumeError(barrel: Barrel): number | undefined {
  const outside = outsideOf(barrel);
  return outside && against(barrel, insideLitres(outside));
}

/** Whether what the row says of its volume, or says by being silent, is so. */
export function saysTrue(barrel: Barrel): boolean {
  const outside = outsideOf(barrel);
  if (!outside) return barrel.volumeNote === VOLUME_NOTES.unknown;
  const agrees = (error: number) => Math.abs(error) <= VOLUME_SHARE;
  const overChime = agrees(against(barrel, litresOverChime(barrel)));
  const [least, most] = [extreme(barrel, 'least'), extreme(barrel, 'most')];
  const between = least < barrel.litres.least && barrel.litres.most < most;
  if (agrees(volumeError(barrel) ?? Infinity)) return barrel.volumeNote === undefined;
  switch (barrel.volumeNote) {
    case VOLUME_NOTES.overChime:
      return overChime;
    case VOLUME_NOTES.apart:
      return between && !overChime;
    case VOLUME_NOTES.others:
      return !between && !overChime && least > barrel.litres.most;
    default:
      return false;
  }
}

function against({ litres }: Barrel, holds: number): number {
  return holds / ((litres.least + litres.most) / 2) - 1;
}

/** The published head taken as what a tape shows over the chime: two staves more than is seen inside it. */
function litresOverChime(barrel: Barrel): number {
  const outside = outsideOf(barrel);
  if (!outside) return NaN;
  return insideLitres({ ...outside, headMm: outside.headMm - 2 * outside.staveMm });
}

/** The least or the most that the published figures allow. */
function extreme(barrel: Barrel, end: 'least' | 'most'): number {
  const other = end === 'least' ? 'most' : 'least';
  const only = (published: Published, at: 'least' | 'most') => ({
    ...published,
    least: published[at],
    most: published[at],
  });
  const outside = outsideOf({
    ...barrel,
    headMm: only(barrel.headMm, end),
    ...(barrel.bilgeMm && { bilgeMm: only(barrel.bilgeMm, end) }),
    ...(barrel.heightMm && { heightMm: only(barrel.heightMm, end) }),
    ...(barrel.staveMm && { staveMm: only(barrel.staveMm, other) }),
    recessMm: only(barrel.recessMm, other),
  });
  return outside ? insideLitres(outside) : NaN;
}
