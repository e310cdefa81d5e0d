import { headDiameter } from '../barrel/blank.ts';
import { freeOfHoopsMm, sideMeasures } from '../barrel/side-measures.ts';
import type { SurfaceProblem } from '../barrel/surface-of.ts';
import type { Finding } from '../findings.ts';
import { LEAST_PLATE_MM } from '../units.ts';
import { inMm, labelled, said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/** A plate that cannot lie where it is to lie, and measures of the barrel's side that nobody took. */
export function checkOnBarrel(input: CheckInput): Finding[] {
  const { design, diameterMm, lying } = input;
  if ('problem' in lying) return problemFinding(lying.problem, input);
  if (lying.surface.kind !== 'side' || design.surface === 'head') return [];
  const findings: Finding[] = [];
  if (sideMeasures(design.head, design.surface)?.guessed) {
    findings.push({ ...aboutPlate('side-not-measured', 'note'), ...said('findings.sideNotMeasured') });
  }
  const roomMm = freeOfHoopsMm(lying.surface.lengthMm);
  if (diameterMm > roomMm) {
    findings.push({
      ...aboutPlate('hoops-in-the-way', 'look', diameterMm, roomMm),
      ...said('findings.hoopsInWay', { size: inMm(diameterMm), room: inMm(roomMm, 0) }),
    });
  }
  return findings;
}

function problemFinding(problem: SurfaceProblem, { design, plate, diameterMm }: CheckInput): Finding[] {
  switch (problem.kind) {
    // Said by the head's own measures and by checkPlateWontDrop.
    case 'no-head':
    case 'larger-than-head':
      return [];
    case 'beyond-half-sphere': {
      const values = {
        head: inMm(headDiameter(design.head).smallerMm),
        crown: inMm(problem.crownMm),
        most: inMm(problem.mostMm),
      };
      return [
        {
          ...aboutPlate('crown-nonsense', 'stop', problem.crownMm, problem.mostMm),
          ...said('findings.beyondHalfSphere', values),
        },
      ];
    }
    case 'no-bilge':
      return [{ ...aboutPlate('side-nonsense', 'stop'), ...said('findings.noBilge') }];
    case 'tapers-wrongly': {
      const values = { end: inMm(problem.endMm), bilge: inMm(problem.bilgeMm) };
      return [
        {
          ...aboutPlate('side-nonsense', 'stop', problem.endMm, problem.bilgeMm),
          ...said('findings.tapersWrongly', values),
        },
      ];
    }
    case 'longer-than-staves': {
      const values = { size: inMm(problem.plateMm), length: inMm(problem.lengthMm) };
      return [
        {
          ...aboutPlate('plate-too-long', 'stop', diameterMm, problem.lengthMm),
          ...said('findings.longerThanStaves', values),
          ...offerSmaller(plate.id, problem.lengthMm),
        },
      ];
    }
    case 'round-the-barrel': {
      const values = { size: inMm(problem.plateMm), most: inMm(problem.mostMm) };
      return [
        {
          ...aboutPlate('plate-too-wide', 'stop', diameterMm, problem.mostMm),
          ...said('findings.roundTheBarrel', values),
          ...offerSmaller(plate.id, problem.mostMm),
        },
      ];
    }
  }
}

/** As much as goes on, and a little less: whole half centimetres. Nothing is offered that is too small for a plate. */
function offerSmaller(plateId: string, mostMm: number): Pick<Finding, 'mend'> {
  const mm = Math.floor((0.9 * mostMm) / 5) * 5;
  if (mm < LEAST_PLATE_MM) return {};
  return {
    mend: {
      ...labelled('mends.diameter', { size: inMm(mm) }),
      change: { kind: 'set-plate-diameter', plateId, diameter: { mm } },
    },
  };
}
