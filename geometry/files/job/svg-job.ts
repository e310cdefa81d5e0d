/**
 * The cut file of a whole sheet, or of one plate on it, as SVG: like a plate's own (svg.ts), in the order of cutting.
 * Each line has the class of its layer, so that an operator can choose by it.
 */
import type { JobDesign, JobSheet } from './job.ts';
import { jobLines, type JobLine, type LineKind, type LineWishes } from './job-lines.ts';
import { jobNotes } from './job-notes.ts';
import { oneLine } from '../plain-text.ts';
import { STROKE, writeSvgFile } from '../svg/svg.ts';
import { contourPath, runPath } from '../svg/svg-path.ts';
import { escapeXml } from '../xml.ts';

const COLOURS: Record<LineKind, string> = {
  cut: '#ff0000',
  rim: '#0000ff',
  'lead-in': '#00a000',
  'lead-out': '#00a000',
  witness: '#c000c0',
  move: '#00a0a0',
  'move raised': '#00a0a0',
  'not cut': '#808080',
};

/** The whole file; throws RangeError when a number is not finite. */
export function writeJobSvg(job: JobSheet, designs: readonly JobDesign[], wishes: LineWishes): string {
  const lines = jobLines(job, wishes);
  const notes = jobNotes(job, designs, wishes);
  const { plate } = wishes;
  // Beside a plate stand its witness marks: seven tenths as much again as the plate is wide hold them all.
  const half = plate ? plate.diameterMm * (wishes.witness ? 0.85 : 0.5) + 0.5 : 0;
  const [left, top, width, height]: [number, number, number, number] = plate
    ? [-half, -half, 2 * half, 2 * half]
    : [-0.5, -job.sheet.heightMm - 0.5, job.sheet.widthMm + 1, job.sheet.heightMm + 1];
  const about = [notes[0], ...notes.slice(2)].map((line) => (line ?? '').replace(/\.?$/, '.')).join(' ');
  return writeSvgFile({ left, top, width, height }, notes[1] ?? '', about, [
    `  <g ${STROKE}>`,
    ...lines.map(pathOf),
    '  </g>',
  ]);
}

function pathOf({ kind, pass, closed, run }: JobLine): string {
  const d = closed ? contourPath(run) : runPath(run);
  const of = pass === '' ? '' : ` data-pass="${escapeXml(oneLine(pass, 200))}"`;
  return `    <path class="${kind.replace(' ', '-')}"${of} stroke="${COLOURS[kind]}" d="${d}"/>`;
}
