import { ON_AXIS_SIN } from '../units.ts';
import type { BarRule } from './bar.ts';
import type { BarFit } from './measure-bar.ts';

/** A bar that leans by less than this looks like one that should stand or lie. */
export const NEARLY_UPRIGHT_RAD = (16 * Math.PI) / 180;

const NEARLY_UPRIGHT_SIN = Math.sin(NEARLY_UPRIGHT_RAD);

/** Cost of leaning from the upright, and of standing off the island's middle. */
const LEAN = { hidden: 0.35, upright: 3, band: 3 } as const;
const OFF = { hidden: 0.4, upright: 0.6, band: 1.5 } as const;
/** Cost of lying slantwise; nearly upright or level costs as much as 45 degrees: it looks like a slip. */
const SLANT = 0.35;
/** Cost of leaving strips of the stroke beside the bar. */
const STRIPS = 0.4;
/** Cost of standing in a join or at a stroke's end. */
const JOINT = { crossing: 0.35, width: 0.4 };

/**
 * Cost of a bar to the look of its letter, mm of stroke. In: how it fits, its direction's x (unit vector), how far it
 * stands off the island's middle (1: its half width), rule. Out: the crossing itself, more where the bar is skew, off
 * the middle, leaning (the manner says how much), shaves a stroke's end or leaves a sliver. Weights are ours, by eye.
 */
export function costOfBar(fit: BarFit, dx: number, aside: number, rule: BarRule): number {
  const lean = dx * dx;
  const fromAxis = Math.min(Math.abs(dx), Math.sqrt(Math.max(0, 1 - lean)));
  const slant = 4 * lean * (1 - lean) + (fromAxis > ON_AXIS_SIN && fromAxis < NEARLY_UPRIGHT_SIN ? 1 : 0);
  const off = Math.min(1.5, aside);
  return (
    fit.crossingMm *
      (1 +
        0.9 * Math.min(fit.skew, 1.5) +
        JOINT.crossing * fit.joint +
        STRIPS * fit.strips +
        OFF[rule.manner] * off * off +
        LEAN[rule.manner] * lean +
        SLANT * slant) +
    rule.widthMm *
      (0.02 +
        0.9 * fit.overhang +
        0.7 * fit.slivers +
        JOINT.width * fit.joint +
        0.1 * off * off +
        0.5 * LEAN[rule.manner] * lean)
  );
}
