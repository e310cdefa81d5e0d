import { ringsGap } from '../measure/distance.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { mapOutline } from '../measure/map-outline.ts';
import { ringBox } from '../measure/ring.ts';
import type { Outline, PathCommand } from '../shapes.ts';
import type { LayoutRules } from './layout-rules.ts';
import { FLATTEN_ERROR_MM, WEB_SPARE_MM } from '../units.ts';

/**
 * What accents keep from their letters, mm: only lettering that takes room has them raised, so that a design agreed
 * on before is still cut as it was.
 */
export function accentWebMm(element: { readonly room?: number | undefined }, rules: LayoutRules): number {
  return element.room === undefined ? 0 : rules.leastWebMm;
}

/** Parts that begin lower than this share of the capitals are the letter itself. */
const LETTER_BELOW = 0.6;
/** Accents that overlap the top of their letter by up to this share of the capitals still stand above it. */
const OVERLAP = 0.05;
const MOST_STEPS = 60;

/**
 * A letter whose accents and dots stand at least the least web above it: at small sizes most faces leave them nearer
 * than metal can be cut. Raised together, no higher than needed; all else of the outline is the very same.
 * In: an outline in mm on its baseline at y 0, the height of the capitals and the least web in mm.
 */
export function partAccents(outline: Outline, capMm: number, leastWebMm: number): Outline {
  const contours = contoursOf(outline).map((commands) => {
    const rings = flattenOutline(commands, FLATTEN_ERROR_MM);
    const boxes = rings.map(ringBox);
    const minY = Math.min(...boxes.map((b) => b.minY));
    return { commands, rings, minY, maxY: Math.max(...boxes.map((b) => b.maxY)) };
  });
  const top = Math.max(...contours.filter((c) => c.minY < LETTER_BELOW * capMm).map((c) => c.maxY));
  const isAccent = (c: { readonly minY: number }): boolean =>
    c.minY >= LETTER_BELOW * capMm && c.minY >= top - OVERLAP * capMm;
  const letter = contours.filter((c) => !isAccent(c)).flatMap((c) => c.rings);
  const accents = contours.filter(isAccent).flatMap((c) => c.rings);
  if (letter.length === 0 || accents.length === 0) return outline;

  const needMm = leastWebMm + WEB_SPARE_MM;
  let up = 0;
  for (let i = 0; i < MOST_STEPS; i++) {
    const raised = accents.map((ring) => ring.map((p) => ({ x: p.x, y: p.y + up })));
    const gap = ringsGap(letter, raised, needMm);
    if (gap === undefined) break;
    up += Math.max(needMm - gap.mm, WEB_SPARE_MM / 10);
  }
  if (up === 0) return outline;
  return contours.flatMap((c) => (isAccent(c) ? mapOutline(c.commands, (x, y) => ({ x, y: y + up })) : c.commands));
}

function contoursOf(outline: Outline): PathCommand[][] {
  const contours: PathCommand[][] = [];
  for (const command of outline) {
    if (command.type === 'M') contours.push([]);
    contours.at(-1)?.push(command);
  }
  return contours;
}
