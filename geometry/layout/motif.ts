import type { FaceSource } from '../adapters/face.ts';
import type { Motif } from '../design/schema.ts';
import { outlineBox } from '../measure/outline-box.ts';
import { drawMotif } from '../motifs/draw-motif.ts';
import { said } from '../sentences/say.ts';
import { layDrawing } from './drawing.ts';
import type { Layout } from './placed.ts';

/** One of our drawings on the plate; one we don't know draws nothing and is said. */
export function layMotif(element: Motif, radiusMm: number, faces: FaceSource): Layout {
  const motif = faces.motif(element.motif);
  if (!motif) {
    const laid = layDrawing(element, { outline: [], width: 1, mark: '', label: 'motif' }, radiusMm);
    return {
      ...laid,
      findings: [
        {
          code: 'unknown-motif',
          severity: 'stop',
          place: { kind: 'plate' },
          elementIds: [element.id],
          ...said('findings.unknownMotif', { motif: element.motif }),
        },
      ],
    };
  }
  const outline = drawMotif(motif, element.options ?? {});
  const box = outlineBox(outline);
  const width = box ? box.maxX - box.minX : 1;
  const mark = `motif|${motif.id}|${JSON.stringify(element.options ?? {})}`;
  return layDrawing(element, { outline, width, mark, label: motif.label }, radiusMm);
}
