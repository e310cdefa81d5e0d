import lily from './drawings/lily.json' with { type: 'json' };
import heart from './drawings/heart.json' with { type: 'json' };
import bell from './drawings/bell.json' with { type: 'json' };
import anchor from './drawings/anchor.json' with { type: 'json' };
import potStill from './drawings/pot-still.json' with { type: 'json' };
import bee from './drawings/bee.json' with { type: 'json' };
import acorn from './drawings/acorn.json' with { type: 'json' };
import oakLeaf from './drawings/oak-leaf.json' with { type: 'json' };
import pear from './drawings/pear.json' with { type: 'json' };
import apple from './drawings/apple.json' with { type: 'json' };
import vineLeaf from './drawings/vine-leaf.json' with { type: 'json' };
import { BARREL } from './barrel.ts';
import { COMPASS } from './compass.ts';
import { CROWN } from './crown.ts';
import { FLOURISH } from './flourish.ts';
import { GRAIN_EAR } from './grain-ear.ts';
import { GRAPES } from './grapes.ts';
import { HAMMERS } from './hammers.ts';
import { HOP_CONE } from './hop-cone.ts';
import { HORSESHOE } from './horseshoe.ts';
import { KEYS } from './keys.ts';
import { KNOT } from './knot.ts';
import type { MotifEntry } from '../motif.ts';
import { readDrawing } from './read-drawing.ts';
import { SHEAF } from './sheaf.ts';
import { STAR } from './star.ts';
import { WREATH } from './wreath.ts';

/**
 * All motifs, those drawn once and for all as data, those that are computed from what is set as code.
 * They stand as they are offered: orchard and field, cellar and workshop, signs and ornaments.
 */
export const MOTIFS: readonly MotifEntry[] = [
  GRAIN_EAR,
  SHEAF,
  HOP_CONE,
  GRAPES,
  readDrawing(vineLeaf),
  readDrawing(apple),
  readDrawing(pear),
  readDrawing(oakLeaf),
  readDrawing(acorn),
  readDrawing(bee),
  BARREL,
  readDrawing(potStill),
  HAMMERS,
  KEYS,
  HORSESHOE,
  readDrawing(anchor),
  readDrawing(bell),
  CROWN,
  readDrawing(heart),
  STAR,
  COMPASS,
  KNOT,
  readDrawing(lily),
  WREATH,
  FLOURISH,
];

export function motifById(id: string): MotifEntry | undefined {
  return MOTIFS.find((m) => m.id === id);
}
