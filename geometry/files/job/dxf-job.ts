/**
 * The cut file of a whole sheet, or of one plate on it: DXF AC1015 like a plate's own (dxf.ts), y up.
 *
 * Entities stand in the order of cutting. Layers say what a line is: CUT, RIM, LEAD-IN, LEAD-OUT, WITNESS, MOVE, MOVE RAISED, NOT CUT, NOTES.
 * Circles of true size are CIRCLE, everything else LWPOLYLINE; a path keeps its beginning, where it is pierced.
 */
import { arcOf, contourToRing } from '../../measure/arc.ts';
import { joinBoxes, ringBox } from '../../measure/ring.ts';
import type { Box, Point, Vertex } from '../../shapes.ts';
import { writeCircle, writePolyline, writeText } from '../dxf/entities.ts';
import { writeDxfFile } from '../dxf/frame.ts';
import type { JobDesign, JobSheet } from './job.ts';
import { jobLines, type JobLine, type LineKind, type LineWishes } from './job-lines.ts';
import { jobNotes } from './job-notes.ts';
import { EXTENT_ERROR_MM } from '../../units.ts';

/** Colour indices: red and blue as in a plate's file, green, magenta and grey beside them. */
const LAYERS: Record<LineKind, { readonly name: string; readonly colour: number }> = {
  cut: { name: 'CUT', colour: 1 },
  rim: { name: 'RIM', colour: 5 },
  'lead-in': { name: 'LEAD-IN', colour: 3 },
  'lead-out': { name: 'LEAD-OUT', colour: 3 },
  witness: { name: 'WITNESS', colour: 6 },
  move: { name: 'MOVE', colour: 4 },
  'move raised': { name: 'MOVE RAISED', colour: 4 },
  'not cut': { name: 'NOT CUT', colour: 8 },
};

/** The whole file; throws RangeError when a number is not finite. */
export function writeJobDxf(job: JobSheet, designs: readonly JobDesign[], wishes: LineWishes): string {
  const lines = jobLines(job, wishes);
  const used = Object.entries(LAYERS).flatMap(([kind, layer]) => (lines.some((l) => l.kind === kind) ? [layer] : []));
  const notes = jobNotes(job, designs, wishes);
  const texts = job.facts && !wishes.plate && !wishes.bare ? notes.map(textBelow) : [];
  const layers = texts.length > 0 ? [...used, NOTES] : used;
  const extent = withTexts(extentOf(job, lines, wishes), texts);
  return writeDxfFile(notes, layers, extent, [...lines, ...texts], (tags, handle, line) => {
    if ('text' in line) {
      writeText(tags, handle, NOTES.name, line);
      return;
    }
    const layer = LAYERS[line.kind].name;
    const circle = wishes.size.kind === 'net' || line.kind === 'not cut' ? circleOf(line) : undefined;
    if (circle) writeCircle(tags, handle, layer, circle.centre, circle.radiusMm);
    else writePolyline(tags, handle, layer, line.run, line.closed);
  });
}

/** Below the sheet, off all that is cut. */
const NOTES = { name: 'NOTES', colour: 7 };
const TEXT_MM = 8;
const LINE_MM = 14;

interface TextLine {
  readonly at: Point;
  readonly heightMm: number;
  readonly text: string;
}

function textBelow(text: string, i: number): TextLine {
  return { at: { x: 0, y: -LINE_MM * (i + 2) }, heightMm: TEXT_MM, text };
}

function withTexts(extent: Box, texts: readonly TextLine[]): Box {
  return { ...extent, minY: Math.min(extent.minY, ...texts.map((line) => line.at.y)) };
}

/** Two half circles the same way round. */
function circleOf({ run, closed }: JobLine): ReturnType<typeof arcOf> {
  const [a, b] = run as [Vertex, Vertex];
  return closed && run.length === 2 && Math.abs(a.bulge) === 1 && a.bulge === b.bulge ? arcOf(a, b) : undefined;
}

function extentOf({ sheet }: JobSheet, lines: readonly JobLine[], { plate }: LineWishes): Box {
  if (!plate) return { minX: 0, minY: 0, maxX: sheet.widthMm, maxY: sheet.heightMm };
  const half = plate.diameterMm / 2;
  const rim: Box = { minX: -half, minY: -half, maxX: half, maxY: half };
  // Witness marks lie outside the rim.
  return joinBoxes([
    rim,
    ...lines.map(({ run, closed }) => ringBox(contourToRing(closed ? run : opened(run), EXTENT_ERROR_MM))),
  ]);
}

/** What the last vertex's bulge says of an open run means nothing. */
function opened(run: readonly Vertex[]): Vertex[] {
  return run.map((v, i) => (i === run.length - 1 ? { ...v, bulge: 0 } : v));
}
