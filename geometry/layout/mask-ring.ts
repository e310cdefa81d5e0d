import type { PlateSpec } from '../design/schema.ts';
import type { Finding } from '../findings.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import { circleCurves } from './arc-curves.ts';
import { MASK_ID } from './no-element.ts';
import type { Layout } from './placed.ts';

/** Room on each side between a plate and the ring around it, so that it drops in: common practice, no source. */
export const MASK_ROOM_MM = 0.75;

/** What a ring must know of its stock, mm. */
interface RingRules {
  readonly leastWebMm: number;
  readonly rimMarginMm: number;
}

/**
 * A ring that keeps paint off the wood around a plate: nothing but one round opening that takes the plate in.
 * In: the ring's own record and diameter in mm, the diameter of the plate it takes in (undefined when there is no such
 * plate), the rules of its stock. Out: its layout; a ring too narrow for its stock is said, and one that is no larger
 * than its opening, or goes around nothing, has no opening at all.
 */
export function layMaskRing(
  ring: PlateSpec,
  diameterMm: number,
  takesInMm: number | undefined,
  rules: RingRules,
): Layout {
  const plate = ring.name;
  if (takesInMm === undefined) return nothing(stop('mask-missing', said('findings.maskMissing', { plate })));
  const radiusMm = takesInMm / 2 + MASK_ROOM_MM;
  const metalMm = diameterMm / 2 - radiusMm;
  const larger: Pick<Finding, 'mend'> =
    ring.diameter === 'fit'
      ? {}
      : {
          mend: {
            ...labelled('mends.fitHead'),
            change: { kind: 'set-plate-diameter', plateId: ring.id, diameter: 'fit' },
          },
        };
  if (metalMm <= 0) {
    const sentence = said('findings.maskNone', { plate, size: inMm(diameterMm), inner: inMm(takesInMm) });
    return nothing({ ...stop('mask-none', sentence), measuredMm: metalMm, limitMm: rules.leastWebMm, ...larger });
  }
  const thin = metalMm < rules.rimMarginMm;
  const finding: Finding = {
    ...stop('mask-thin', said('findings.maskThin', { plate, metal: inMm(metalMm), least: inMm(rules.rimMarginMm) })),
    severity: metalMm < rules.leastWebMm ? 'stop' : 'look',
    measuredMm: metalMm,
    limitMm: rules.rimMarginMm,
    ...larger,
  };
  return {
    shapes: [
      {
        id: `${MASK_ID}/0`,
        elementId: MASK_ID,
        label: 'opening for the plate',
        storeKey: `mask|${radiusMm}`,
        outline: circleCurves({ x: 0, y: 0 }, radiusMm, false),
        placement: { x: 0, y: 0, turnDeg: 0 },
        word: 0,
      },
    ],
    extents: [],
    findings: thin ? [finding] : [],
  };
}

function nothing(finding: Finding): Layout {
  return { shapes: [], extents: [], findings: [finding] };
}

function stop(code: string, sentence: Pick<Finding, 'sentence' | 'words'>): Finding {
  return { code, severity: 'stop', place: { kind: 'plate' }, elementIds: [], ...sentence };
}
