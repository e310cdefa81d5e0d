import type { Artwork } from '../design/schema.ts';
import { readPathData } from '../measure/path-data.ts';
import { outlineBox } from '../measure/outline-box.ts';
import type { Layout } from './placed.ts';
import { said } from '../sentences/say.ts';
import { layDrawing } from './drawing.ts';
import { LEAST_DIVISOR } from '../units.ts';

/** An imported drawing on the plate; a path that can't be read draws nothing and is said. */
export function layArtwork(element: Artwork, radiusMm: number): Layout {
  const read = readPathData(element.path);
  if ('problem' in read) {
    const laid = layDrawing(element, { outline: [], width: 1, mark: '', label: 'drawing' }, radiusMm);
    return {
      ...laid,
      findings: [
        {
          code: 'artwork-unreadable',
          severity: 'stop',
          place: { kind: 'plate' },
          elementIds: [element.id],
          ...said('findings.artworkUnreadable', { name: element.name, problem: read.problem }),
        },
      ],
    };
  }
  const box = outlineBox(read.outline);
  const width = box ? (box.maxX - box.minX) / Math.max(box.maxY - box.minY, LEAST_DIVISOR) : 1;
  return layDrawing(
    element,
    { outline: read.outline, width, mark: `artwork|${element.path}`, label: 'drawing' },
    radiusMm,
  );
}
