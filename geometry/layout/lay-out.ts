import type { Face, FaceSource } from '../adapters/face.ts';
import type { Design, DesignElement } from '../design/schema.ts';
import type { Kept } from '../kept.ts';
import { layBorder } from './border.ts';
import type { LayoutRules } from './layout-rules.ts';
import { layArtwork } from './artwork.ts';
import { layLineText } from './line-text.ts';
import type { Layout } from './placed.ts';
import { layMotif } from './motif.ts';
import { layRingText } from './ring-text.ts';

/** Elements already laid out, by the element, the radius and the rules, each with the face it was set in. */
export type LayoutStore = Kept<LaidElement>;

export interface LaidElement extends Layout {
  readonly face: Face | undefined;
}

/**
 * Places all elements of a design on one plate.
 *
 * In: a design, the plate's diameter in mm (more than 0), the rules of its stock, the faces it uses.
 * Out: shapes in mm, outlines in their own frames with a placement each (frame and angles: shapes.ts), an extent for
 * every element even when it draws nothing, and findings. The same input always gives the same output.
 * Promised: letters of one text keep the least web between them, border pieces least web and least bridge.
 * Not promised: that elements keep clear of each other or of the rim; the checks say that.
 */
export function layOut(
  design: Design,
  diameterMm: number,
  rules: LayoutRules,
  faces: FaceSource,
  store?: LayoutStore,
): Layout {
  const radiusMm = diameterMm / 2;
  const ruled = `${radiusMm}|${rules.leastWebMm}|${rules.leastBridgeMm}|${rules.leastOpeningMm}|`;
  const parts = design.elements.map((element) => {
    const lay = () => layElement(element, radiusMm, rules, faces);
    if (!store) return lay();
    const face = 'face' in element ? faces.get(element.face) : undefined;
    const key = ruled + JSON.stringify(element);
    return store.once(
      key,
      () => ({ ...lay(), face }),
      (laid) => laid.face === face,
    );
  });
  return {
    shapes: parts.flatMap((part) => part.shapes),
    extents: parts.flatMap((part) => part.extents),
    findings: parts.flatMap((part) => part.findings),
  };
}

function layElement(element: DesignElement, radiusMm: number, rules: LayoutRules, faces: FaceSource): Layout {
  switch (element.kind) {
    case 'ringText':
      return layRingText(element, radiusMm, rules, faces);
    case 'lineText':
      return layLineText(element, radiusMm, rules, faces);
    case 'border':
      return layBorder(element, radiusMm, rules);
    case 'motif':
      return layMotif(element, radiusMm);
    case 'artwork':
      return layArtwork(element, radiusMm);
  }
}
