import type { Finding } from '../findings.ts';
import { checkBridgeTooThin } from './bridge-too-thin.ts';
import { checkCrownGap } from './crown-gap.ts';
import { checkHeavyPlate } from './heavy-plate.ts';
import type { CheckInput } from './input.ts';
import { checkLayIn } from './lay-in.ts';
import { checkLettering } from './check-lettering.ts';
import { checkNothingToCut } from './nothing-to-cut.ts';
import { checkOnBarrel } from './on-barrel.ts';
import { checkOverspray } from './overspray.ts';
import { checkPlateWontDrop } from './plate-wont-drop.ts';
import { checkRolled } from './rolled.ts';
import { checkSoftIsland } from './soft-island.ts';
import { checkTextOverlap } from './text-overlap.ts';
import { checkTooNearRim } from './too-near-rim.ts';
import { checkUnfilledPlaces } from './unfilled-places.ts';

/** Every check of a plate that is no measure of the finished metal; a new check is one file and one line here. */
const CHECKS: readonly ((input: CheckInput) => Finding[])[] = [
  checkTooNearRim,
  checkTextOverlap,
  checkBridgeTooThin,
  checkSoftIsland,
  checkPlateWontDrop,
  checkOnBarrel,
  checkRolled,
  checkCrownGap,
  checkLayIn,
  checkOverspray,
  checkHeavyPlate,
  checkNothingToCut,
  checkUnfilledPlaces,
  checkLettering,
];

/** What is wrong with a bridged plate, in the order of the checks. The stock's and the layout's findings are theirs. */
export function checkPlate(input: CheckInput): Finding[] {
  return CHECKS.flatMap((check) => check(input));
}
