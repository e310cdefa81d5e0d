import type { FaceSource } from '../adapters/face.ts';
import type { Design, DesignElement } from '../design/schema.ts';
import { layBorder } from './border.ts';
import type { LayoutRules } from './layout-rules.ts';
import { layArtwork } from './artwork.ts';
import { layLineText } from './line-text.ts';
import type { Layout } from './placed.ts';
import { layMotif } from './motif.ts';
import { layRingText } from './ring-text.ts';

/**
 * Places all elements of a design on one plate.
 *
 * In: a design, the plate's diameter in mm (more than 0), the rules of its stock, the faces it uses.
 * Out: shapes in mm, outlines in their own frames with a placement each (frame and angles: shapes.ts), an extent for
 * every element even when it draws nothing, and findings. The same input always gives the same output.
 * Promised: letters of one text keep the least web between them, border pieces least web and least bridge.
 * Not promised: that elements keep clear of each other or of the rim; the checks say that.
 */
export function layOut(design: Design, diameterMm: number, rules: LayoutRules, faces: FaceSource): Layout {
  const parts = design.elements.map((element) => layElement(element, diameterMm / 2, rules, faces));
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
