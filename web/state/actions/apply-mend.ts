import type { Design } from '../../../geometry/design/schema.ts';
import type { Mend } from '../../../geometry/findings.ts';
import type { Change } from '../change.ts';
import { addMaskRing } from './plates/add-mask-ring.ts';
import { forgetEdits } from './bridges/forget-edits.ts';
import { scaleText } from './elements/scale-text.ts';
import { setBand } from './elements/set-band.ts';
import { setFace } from './elements/set-face.ts';
import { setLifting } from './plates/set-lifting.ts';
import { setPlate } from './plates/set-plate.ts';
import { setStock } from './set-fields.ts';
import { setText } from './elements/set-text.ts';
import { setTracking } from './elements/set-tracking.ts';

/** Does what a finding offers; always a step of its own. */
export function applyMend(design: Design, mend: Mend): Change {
  return { design: changed(design, mend).design, undo: 'step' };
}

function changed(design: Design, mend: Mend): Change {
  switch (mend.kind) {
    case 'scale-text':
      return scaleText(design, mend.elementId, mend.share);
    case 'move-band':
      return setBand(design, mend.elementId, mend.inner, mend.outer);
    case 'set-tracking':
      return setTracking(design, mend.elementId, mend.tracking);
    case 'replace-text':
      return setText(design, mend.elementId, mend.text);
    case 'set-face':
      return setFace(design, mend.face, mend.elementId);
    case 'set-stock': {
      const { kind: _, ...part } = mend;
      return setStock(design, part);
    }
    case 'forget-edits':
      return forgetEdits(design, mend.editIds);
    case 'set-plate-diameter':
      return setPlate(design, mend.plateId, { diameter: mend.diameter });
    case 'set-lifting':
      return setLifting(design, mend.lifting);
    case 'add-mask-ring':
      return addMaskRing(design, mend.plateId);
  }
}
