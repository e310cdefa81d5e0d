import { checkNest } from '../../../geometry/sheet/check-nest.ts';
import { countBound } from '../../../geometry/sheet/count-bound.ts';
import { nest } from '../../../geometry/sheet/nest.ts';
import { packEqual } from '../../sheet/pack-equal.ts';
import { containerOfSheet } from '../../../geometry/sheet/container.ts';
import { rowsHold, smallBeyondLarge } from '../../sheet/hexagonal-rows.ts';
import { GAPS, SHEET, THOUSAND, wish } from '../../sheet/lists.ts';
import { SQUARE_RADII } from '../../sheet/published-circles.ts';
import { rounded, type Claim } from '../claim.ts';

const LARGE = 508;
const SMALL = 254;

export const SHEET_CLAIMS: readonly Claim[] = [
  {
    name: 'packing',
    wanted: 'n = 1..20 equal circles in a square: radius at most 0.5 % under the published one, never above',
    measure() {
      const short = SQUARE_RADII.map((radius, i) => 1 - clearRadius(packEqual(i + 1, 1, 1), i + 1) / radius);
      const worst = Math.max(...short);
      const ok = worst <= 0.005 && Math.min(...short) > -1e-9;
      const unit = `% at n = ${short.indexOf(worst) + 1}, the worst of ${short.length}`;
      return Promise.resolve({ value: rounded(100 * worst, 2), unit, ok });
    },
  },
  {
    name: 'mixed-sheet',
    wanted: `at least 1 times the area of hexagonal rows, for 0, 1, 2 .. plates of ${LARGE} and as many of ${SMALL} as fit`,
    measure() {
      const most = rowsHold(SHEET, LARGE, GAPS);
      const counts = Array.from({ length: most + 1 }, (_, count) => count);
      const found = counts.map((count) => mixed(count));
      const least = Math.min(...found.map(({ ratio }) => ratio));
      const faults = found.reduce((sum, one) => sum + one.faults, 0);
      const largest = mixed(99);
      const bound = countBound(containerOfSheet(SHEET, GAPS), (LARGE + GAPS.betweenMm) / 2);
      const unit =
        `times, the least of ${found.length} (mean ${rounded(mean(found.map(({ ratio }) => ratio)))}); ${faults} faults; ` +
        `of ${LARGE} alone ${largest.large} lie there, rows hold ${most}, none more than ${bound}`;
      const ok = least >= 1 && faults + largest.faults === 0 && largest.large >= most && largest.large <= bound;
      return Promise.resolve({ value: rounded(least), unit, ok });
    },
  },
  {
    name: 'thousand',
    wanted: 'fewer sheets than rows of each size take, no faults, in at most 60 s',
    measure() {
      const begin = performance.now();
      const { sheets } = nest(THOUSAND, [SHEET], GAPS);
      const seconds = (performance.now() - begin) / 1000;
      const faults = checkNest(sheets, THOUSAND, [SHEET], GAPS).length;
      const area = THOUSAND.reduce((sum, one) => sum + one.quantity * (Math.PI / 4) * one.diameterMm ** 2, 0);
      const bound = Math.ceil(area / (SHEET.widthMm * SHEET.heightMm));
      const rows = THOUSAND.map((one) => Math.ceil(one.quantity / rowsHold(SHEET, one.diameterMm, GAPS)));
      const inRows = rows.reduce((sum, count) => sum + count, 0);
      const unit = `sheets (rows ${inRows}; bare area of the plates ${bound}), ${faults} faults, ${rounded(seconds)} s`;
      return Promise.resolve({
        value: sheets.length,
        unit,
        ok: sheets.length < inRows && faults === 0 && seconds <= 60,
      });
    },
  },
];

/** The radius that the centres leave free, worked out from them alone. */
function clearRadius(discs: readonly { readonly x: number; readonly y: number }[], count: number): number {
  if (discs.length !== count) return 0;
  return Math.min(
    ...discs.flatMap((a, i) => [
      Math.min(a.x, a.y, 1 - a.x, 1 - a.y),
      ...discs.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y) / 2),
    ]),
  );
}

function mixed(count: number) {
  const wishes = [wish('large', LARGE, count), wish('small', SMALL, 60)];
  const { sheets } = nest(wishes, [{ ...SHEET, count: 1 }], GAPS);
  const plates = sheets.flatMap((sheet) => sheet.plates);
  const rows =
    count * LARGE ** 2 + (smallBeyondLarge(SHEET, { diameterMm: LARGE, count }, SMALL, GAPS) ?? 0) * SMALL ** 2;
  return {
    large: plates.filter((plate) => plate.wish === 'large').length,
    ratio: plates.reduce((sum, { diameterMm }) => sum + diameterMm ** 2, 0) / rows,
    faults: checkNest(sheets, wishes, [SHEET], GAPS, false).length,
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
