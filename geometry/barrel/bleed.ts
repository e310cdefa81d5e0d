/**
 * How far off straight a hand holds a spray can: common practice, no source. No published figure for paint that
 * creeps under a stencil was found, so this is a rule of thumb and is called one wherever it is shown.
 */
const SPRAY_OFF_STRAIGHT_DEG = 20;

/** How far paint gets under an edge that stands off the wood: gap times the tangent of the spray's angle, mm. */
export function bleedMm(gapMm: number, offStraightDeg = SPRAY_OFF_STRAIGHT_DEG): number {
  return gapMm * Math.tan((offStraightDeg * Math.PI) / 180);
}
