import { isBand } from '../../../geometry/design/kinds.ts';
import type { DesignElement } from '../../../geometry/design/schema.ts';
import { ROUNDING } from '../../../geometry/units.ts';
import { isFree, pullElement, shiftElement, swingElement } from '../../state/actions/elements/move-element.ts';

/** Moves an element right and up as one sees it, mm: below the middle, along a ring to the right is against the clock. */
export function nudge(e: DesignElement, right: number, up: number, radiusMm: number): DesignElement {
  if (isFree(e)) return shiftElement(e, right / radiusMm, up / radiusMm);
  const sense = e.kind === 'ringText' && Math.cos((e.middleDeg * Math.PI) / 180) < -ROUNDING ? -1 : 1;
  return pullElement(swingElement(e, right * sense), (up * sense) / radiusMm);
}

/** Moves free ones to the plate's middle line, across only; ring text to the top or bottom, whichever is nearer. */
export function centre(e: DesignElement): DesignElement {
  if (!isBand(e)) return shiftElement(e, -e.x, 0);
  if (e.kind === 'border') return e;
  return swingElement(e, (Math.cos((e.middleDeg * Math.PI) / 180) < 0 ? 180 : 0) - e.middleDeg);
}
