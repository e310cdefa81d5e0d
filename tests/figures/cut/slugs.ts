import { computeSlugChances, TIP_LIMIT } from '../../../geometry/cutplan/sheet/slugs.ts';
import type { SlugChances } from '../../../geometry/cutplan/sheet-plan.ts';
import { barContour, discContour, symmetricByHand } from '../../cutplan/slugs-by-hand.ts';
import { type Claim, rounded } from '../claim.ts';
import { LASER } from './demo-sheet.ts';
import { demoSheets } from './paths.ts';

const WIDTHS_MM = Array.from({ length: 60 }, (_, i) => 2.3 + 1.7 * i);

/** What becomes of pieces that are cut free. */
export const SLUG_CLAIMS: readonly Claim[] = [
  {
    name: 'slugs-by-hand',
    wanted: 'chances of bars and discs against the closed formula of the model, worst difference at most 0.01',
    measure() {
      let worst = 0;
      for (const slats of [LASER.slats, { pitchMm: 40, edgeMm: 4 }, { pitchMm: 100, edgeMm: 2 }]) {
        for (const widthMm of WIDTHS_MM) {
          const want = symmetricByHand(widthMm, slats);
          for (const piece of [barContour(widthMm, 7), discContour(widthMm)]) {
            worst = Math.max(worst, farthest(computeSlugChances(piece, slats), want));
          }
        }
      }
      const unit = `of 1, ${WIDTHS_MM.length} widths over three tables of slats`;
      return Promise.resolve({ value: rounded(worst, 2), unit, ok: worst <= 0.01 });
    },
  },
  {
    name: 'slugs-told-apart',
    wanted: 'on the demo sheets at most half of the pieces are called likely to stand in the way, and not none',
    async measure() {
      const slugs = (await demoSheets()).flatMap(({ plan }) => plan.slugs);
      const share = slugs.filter((s) => s.tips > TIP_LIMIT).length / slugs.length;
      const drops = slugs.filter((s) => s.drops > 0.5).length / slugs.length;
      const unit = `of ${slugs.length} pieces (${rounded(drops)} rather drop)`;
      return { value: rounded(share), unit, ok: share > 0 && share <= 0.5 };
    },
  },
];

function farthest(found: SlugChances, want: Omit<SlugChances, 'riseMm'>): number {
  return Math.max(...(['drops', 'lies', 'tips'] as const).map((k) => Math.abs(found[k] - want[k])));
}
