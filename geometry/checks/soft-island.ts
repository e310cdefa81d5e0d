import type { Hang } from '../bridges/types.ts';
import type { Stock } from '../design/schema.ts';
import type { Finding, Severity } from '../findings.ts';
import type { Stiffness } from '../stock/elastic.ts';
import { type Material, materialIn, processIn, type StockBook } from '../stock/stock-book.ts';
import { amount, inMm, labelled, said, sheetWords } from '../sentences/say.ts';
import type { Wording } from '../sentences/wording.ts';
import type { CheckInput } from './input.ts';
import { callElement } from './words.ts';

/** So many times the limit no hand can be careful enough. Common practice, no source. */
const STOP_SHARE = 4;
/**
 * A flat bar bends over for good at so many times the moment that first makes its skin yield: the shape factor of a
 * rectangle (plastic theory, EN 1993-1-1 6.2.5 with Wpl = wt2/4 against Wel = wt2/6).
 */
const PLASTIC_SHARE = 1.5;
/** Findings for the softest islands only: what mends one mends the others. */
const MOST_SAID = 5;

/**
 * Islands that give too much under a finger, hang down, or would leave their bridges bent.
 * The figures come with the islands (geometry/bridges/stiffness.ts); an island without them is of a stock that is not
 * judged, or lies loose, which is another finding. Plastic springs back: it is never stopped for being soft.
 */
export function checkSoftIsland({ design, rules, islands, book }: CheckInput): Finding[] {
  const { stiffness } = rules;
  const material = materialIn(book, design.stock.material);
  if (!stiffness || !material) return [];
  const seen = new Set<string>();
  return islands
    .flatMap((island) => {
      const { hang } = island;
      if (!hang) return [];
      // Two parts of one island have the same softest point.
      const at = `${hang.softAt.x},${hang.softAt.y}`;
      if (seen.has(at)) return [];
      seen.add(at);
      const worst = worstOf(hang, stiffness);
      return worst.by > 1 ? [{ island, hang, worst }] : [];
    })
    .sort((p, q) => q.worst.by - p.worst.by)
    .slice(0, MOST_SAID)
    .map(({ island, hang, worst }) => ({
      code: 'soft-island',
      severity: severityOf(hang, stiffness, material),
      place: { kind: 'point', at: island.at, radiusMm: Math.sqrt(island.areaMm2 / Math.PI) + rules.leastBridgeMm },
      elementIds: island.elementIds,
      measuredMm: worst.kind === 'sag' ? hang.sagMm : hang.touchMm,
      ...(worst.kind === 'strain'
        ? {}
        : { limitMm: worst.kind === 'sag' ? stiffness.sagLimitMm : stiffness.touchLimitMm }),
      ...mendOf(worst, design.stock, material, book),
      ...SAYS[worst.kind](callElement(design.elements, island.elementIds[0] ?? ''), hang, stiffness),
    }));
}

type Kind = 'touch' | 'sag' | 'strain';

const SAYS: Record<Kind, (what: Wording, hang: Hang, limits: Stiffness) => Pick<Finding, 'sentence' | 'words'>> = {
  touch: (what, { touchMm }, { touchLimitMm, touchN }) =>
    said('findings.softTouch', { what, touch: inMm(touchMm), force: touchN, limit: inMm(touchLimitMm) }),
  sag: (what, { sagMm }, { sagLimitMm }) =>
    said('findings.softSag', { what, sag: inMm(sagMm), limit: inMm(sagLimitMm) }),
  strain: (what, { rootMPa }, { touchN, yieldMPa = 0 }) =>
    said('findings.softStrain', { what, stress: amount(rootMPa), force: touchN, yields: amount(yieldMPa) }),
};

function worstOf({ touchMm, sagMm, rootMPa }: Hang, limits: Stiffness): { kind: Kind; by: number } {
  const ways: { kind: Kind; by: number }[] = [
    { kind: 'touch', by: touchMm / limits.touchLimitMm },
    { kind: 'sag', by: sagMm / limits.sagLimitMm },
    { kind: 'strain', by: rootMPa / (limits.yieldMPa ?? Infinity) },
  ];
  return ways.reduce((worst, way) => (way.by > worst.by ? way : worst));
}

function severityOf({ touchMm, sagMm, rootMPa }: Hang, limits: Stiffness, material: Material): Severity {
  if (material.family === 'plastic') return 'look';
  const far = Math.max(touchMm / limits.touchLimitMm, sagMm / limits.sagLimitMm);
  const bentOver = rootMPa > PLASTIC_SHARE * (limits.yieldMPa ?? Infinity);
  return far > STOP_SHARE || bentOver ? 'stop' : 'look';
}

/**
 * The next sheet of the same material that should do by a rough reckoning: deflection falls with the cube of the
 * thickness (stress and sag with its square); the process must take it.
 */
function mendOf(
  { kind, by }: { kind: Kind; by: number },
  stock: Stock,
  material: Material,
  book: StockBook,
): Pick<Finding, 'mend'> {
  const wanted = stock.thicknessMm * by ** (kind === 'touch' ? 1 / 3 : 1 / 2);
  const range = processIn(book, stock.process)?.families[material.family]?.thicknessMm;
  const sheet = material.thicknesses.find(({ mm }) => mm >= wanted && mm > stock.thicknessMm);
  if (!sheet || !range || sheet.mm > range.most) return {};
  return {
    mend: {
      ...labelled('mends.sheet', { sheet: sheetWords(sheet) }),
      change: { kind: 'set-stock', thicknessMm: sheet.mm },
    },
  };
}
