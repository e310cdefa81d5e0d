import type { Motif } from '../design/schema.ts';
import { clockPoint } from '../measure/clock.ts';
import { mapOutline } from '../measure/map-outline.ts';
import type { Outline, Placement } from '../shapes.ts';
import type { Extent, Layout, PlacedShape } from './placed.ts';

/** What motifs and artwork have in common: place, size, turn, and how often they go round. */
export type Drawn = Pick<Motif, 'id' | 'x' | 'y' | 'size' | 'turnDeg' | 'mirrored' | 'around'>;

/** A drawing in its own frame: its box is centred on the origin and 1 high; y up. */
export interface Drawing {
  readonly outline: Outline;
  /** Width of its box when it is 1 high. */
  readonly width: number;
  /** Names this outline: equal marks mean equal outlines. */
  readonly mark: string;
  /** What a person would call it. */
  readonly label: string;
}

/**
 * A drawing placed on a plate, once or evenly round the centre.
 * In: where it lies (shares of the radius), the drawing, the plate's radius in mm. Out: one shape each, in mm.
 */
export function layDrawing(element: Drawn, drawing: Drawing, radiusMm: number): Layout {
  const heightMm = element.size * radiusMm;
  const outline = scaled(drawing.outline, heightMm, element.mirrored === true);
  const storeKey = `${drawing.mark}|${element.mirrored === true ? 'm' : ''}|${heightMm}`;
  const places = placesOf(element, radiusMm);
  const shapes = places.map((placement, i): PlacedShape => {
    const id = `${element.id}/${i}`;
    return { id, elementId: element.id, label: drawing.label, storeKey, outline, placement, word: i };
  });
  const extents = places.map((at): Extent => {
    return { kind: 'box', elementId: element.id, ...at, widthMm: drawing.width * heightMm, heightMm };
  });
  return { shapes: drawing.outline.length === 0 ? [] : shapes, extents, findings: [] };
}

/** Where each copy lies, mm; the first is the element itself, the others follow clockwise about the centre. */
function placesOf(element: Drawn, radiusMm: number): Placement[] {
  const count = element.around === 'once' ? 1 : element.around.count;
  const away = Math.hypot(element.x, element.y) * radiusMm;
  const clockDeg = (Math.atan2(element.x, element.y) * 180) / Math.PI;
  return Array.from({ length: count }, (_, i) => {
    const deg = (i * 360) / count;
    const at = i === 0 ? { x: element.x * radiusMm, y: element.y * radiusMm } : clockPoint(away, clockDeg + deg);
    return { ...at, turnDeg: element.turnDeg + deg };
  });
}

function scaled(outline: Outline, by: number, mirrored: boolean): Outline {
  const sx = mirrored ? -by : by;
  return mapOutline(outline, (x, y) => ({ x: x * sx, y: y * by }));
}
