import type { Design, Head, PlateSpec } from '../design/schema.ts';
import type { Finding } from '../findings.ts';
import { GREATEST_PLATE_MM, LEAST_PLATE_MM, WHOLE_STEP } from '../units.ts';
import { inMm, named, said, say } from '../sentences/say.ts';
import { barrelById } from './barrels.ts';
import { freeOfHoopsMm, sideMeasures } from './side-measures.ts';

/** A blank's diameter is a whole number of these: what a shop reads off a rule. Common practice, no source. */
export const DIAMETER_STEP_MM = 0.5;

/** Readings that differ by more are more likely a slip than a shrunken head. Common practice, no source. */
const GREATEST_OVAL_SHARE = 0.08;

/** Stands in when a design names a barrel that nobody knows: the commonest head, 21 in. Common practice, no source. */
const FALLBACK_HEAD_MM = 533.4;

export interface HeadDiameter {
  /** The smaller diameter counts: a plate has to drop in whichever way it is turned. 0 when nothing sensible is known. */
  readonly smallerMm: number;
  readonly largerMm: number;
  /** False when the diameters come from the barrel table. */
  readonly measured: boolean;
  readonly findings: Finding[];
}

/** The visible head inside the chime, mm, from what was measured or from the barrel table. */
export function headDiameter(head: Head): HeadDiameter {
  const source = head.source;
  if (source.kind === 'barrel') return tableHead(source.barrel);
  const [smallerMm, largerMm] = [Math.min(source.alongMm, source.acrossMm), Math.max(source.alongMm, source.acrossMm)];
  if (!(smallerMm > 0)) {
    const sentence = said('findings.headNonsense', { across: inMm(smallerMm) });
    return {
      smallerMm: 0,
      largerMm: Math.max(0, largerMm),
      measured: true,
      findings: [stop('head-diameter-nonsense', sentence)],
    };
  }
  const findings: Finding[] = [];
  if (largerMm - smallerMm > GREATEST_OVAL_SHARE * largerMm) {
    findings.push({
      code: 'head-measures-differ',
      severity: 'look',
      place: { kind: 'plate' },
      elementIds: [],
      measuredMm: largerMm - smallerMm,
      limitMm: GREATEST_OVAL_SHARE * largerMm,
      ...said('findings.headDiametersDiffer', { difference: inMm(largerMm - smallerMm) }),
    });
  }
  return { smallerMm, largerMm, measured: true, findings };
}

/**
 * Diameter of one plate's blank, mm: for `fit` the smaller head diameter less the clearance on each side, for a share
 * that part of it, both rounded down to the shop's step; on the side of a barrel what is free between its hoops stands
 * for the head; or the diameter asked for outright. What makes no sense is a finding that stops the cut, and the nearest
 * possible diameter is given, so that the plate can still be drawn.
 */
export function plateDiameterMm(design: Design, plate: PlateSpec): { diameterMm: number; findings: Finding[] } {
  const asked = plate.diameter;
  const head = headDiameter(design.head);
  // On the side of a barrel a diameter said outright asks nothing of the head.
  if (typeof asked === 'object' && 'mm' in asked)
    return within(asked.mm, plate, design.surface === 'head' ? head.findings : []);
  if (design.surface !== 'head') {
    const side = sideMeasures(design.head, design.surface);
    const free = stepDown(side && side.lengthMm > 0 ? freeOfHoopsMm(side.lengthMm) : 0);
    // What is wrong with the side, its own check says.
    const mm = asked === 'fit' ? free : stepDown(free * asked.share);
    return mm > 0 ? within(mm, plate, []) : { diameterMm: LEAST_PLATE_MM, findings: [] };
  }
  if (head.smallerMm <= 0) return { diameterMm: LEAST_PLATE_MM, findings: head.findings };
  const fitting = stepDown(head.smallerMm - 2 * design.head.clearanceMm);
  return within(asked === 'fit' ? fitting : stepDown(fitting * asked.share), plate, head.findings);
}

function within(
  diameterMm: number,
  plate: PlateSpec,
  findings: Finding[],
): { diameterMm: number; findings: Finding[] } {
  if (diameterMm >= LEAST_PLATE_MM && diameterMm <= GREATEST_PLATE_MM) return { diameterMm, findings };
  const small = !(diameterMm >= LEAST_PLATE_MM);
  const limitMm = small ? LEAST_PLATE_MM : GREATEST_PLATE_MM;
  const sentence = said('findings.plateDiameterNonsense', {
    plate: plate.name,
    size: inMm(diameterMm),
    least: inMm(LEAST_PLATE_MM),
    most: inMm(GREATEST_PLATE_MM),
  });
  return {
    diameterMm: limitMm,
    findings: [...findings, { ...stop('plate-diameter-nonsense', sentence), measuredMm: diameterMm, limitMm }],
  };
}

function tableHead(id: string): HeadDiameter {
  const barrel = barrelById(id);
  if (!barrel) {
    const sentence = said('findings.unknownBarrel', { barrel: id });
    return {
      smallerMm: FALLBACK_HEAD_MM,
      largerMm: FALLBACK_HEAD_MM,
      measured: false,
      findings: [stop('unknown-barrel', sentence)],
    };
  }
  const { least, most } = barrel.headMm;
  const range =
    least === most
      ? say('names.about', { length: inMm(least) })
      : say('names.fromTo', { from: inMm(least), to: inMm(most) });
  return {
    smallerMm: least,
    largerMm: most,
    measured: false,
    findings: [
      {
        code: 'head-not-measured',
        // said where the head is asked for; nothing is wrong with the design
        severity: 'note',
        place: { kind: 'plate' },
        elementIds: [],
        measuredMm: least,
        ...said('findings.headNotMeasured', { barrel: named(`barrels.${barrel.id}.name`, barrel.name), range }),
      },
    ],
  };
}

/** Down to the step; the small addition keeps 522 from falling to 521.5 when it arrives as 521.9999999. */
function stepDown(diameterMm: number): number {
  return Math.floor(diameterMm / DIAMETER_STEP_MM + WHOLE_STEP) * DIAMETER_STEP_MM;
}

function stop(code: string, sentence: Pick<Finding, 'sentence' | 'words'>): Finding {
  return { code, severity: 'stop', place: { kind: 'plate' }, elementIds: [], ...sentence };
}
