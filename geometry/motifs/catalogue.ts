import { ACORN } from './acorn.ts';
import { ANCHOR } from './anchor.ts';
import { APPLE } from './apple.ts';
import { BARREL } from './barrel.ts';
import { BEE } from './bee.ts';
import { BELL } from './bell.ts';
import { COMPASS } from './compass.ts';
import { CROWN } from './crown.ts';
import { FLOURISH } from './flourish.ts';
import { GRAIN_EAR } from './grain-ear.ts';
import { GRAPES } from './grapes.ts';
import { HAMMERS } from './hammers.ts';
import { HEART } from './heart.ts';
import { HOP_CONE } from './hop-cone.ts';
import { HORSESHOE } from './horseshoe.ts';
import { KEYS } from './keys.ts';
import { KNOT } from './knot.ts';
import { LILY } from './lily.ts';
import type { MotifEntry } from './motif.ts';
import { OAK_LEAF } from './oak-leaf.ts';
import { PEAR } from './pear.ts';
import { POT_STILL } from './pot-still.ts';
import { SHEAF } from './sheaf.ts';
import { STAR } from './star.ts';
import { VINE_LEAF } from './vine-leaf.ts';
import { WREATH } from './wreath.ts';

/** All motifs, as they are offered: orchard and field, cellar and workshop, signs and ornaments. */
export const MOTIFS: readonly MotifEntry[] = [
  GRAIN_EAR,
  SHEAF,
  HOP_CONE,
  GRAPES,
  VINE_LEAF,
  APPLE,
  PEAR,
  OAK_LEAF,
  ACORN,
  BEE,
  BARREL,
  POT_STILL,
  HAMMERS,
  KEYS,
  HORSESHOE,
  ANCHOR,
  BELL,
  CROWN,
  HEART,
  STAR,
  COMPASS,
  KNOT,
  LILY,
  WREATH,
  FLOURISH,
];

export function motifById(id: string): MotifEntry | undefined {
  return MOTIFS.find((m) => m.id === id);
}
