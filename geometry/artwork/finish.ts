import { LONGEST_PATH } from '../design/limits.ts';
import { outlineBox } from '../measure/outline-box.ts';
import { writePathData } from '../measure/path-data.ts';
import type { Outline } from '../shapes.ts';
import type { Composed } from './painted.ts';
import { through } from './through.ts';

/**
 * An outline, y up, as an artwork element carries it: its box centred on the origin and 1 high.
 * In: how many openings it has, how many specks were left out, and how often it is larger than the drawing it came from.
 */
export function finish(outline: Outline, openings: number, specks: number, scale: number): Composed {
  const box = outlineBox(outline);
  if (!box) return { trouble: 'nothing' };
  const [tall, wide] = [box.maxY - box.minY, box.maxX - box.minX];
  if (!(tall > 0) || !(wide > 0) || wide / tall > WIDEST || tall / wide > WIDEST) return { trouble: 'flat' };
  const by = 1 / tall;
  const centred = through(outline, [
    by,
    0,
    0,
    by,
    (-by * (box.minX + box.maxX)) / 2,
    (-by * (box.minY + box.maxY)) / 2,
  ]);
  const path = writePathData(centred, DECIMALS);
  if (path.length > LONGEST_PATH) return { trouble: 'tooDetailed' };
  return { path, width: wide * by, openings, specks, height: tall / scale };
}

/** 0.003 mm on a drawing 600 mm high. */
const DECIMALS = 5;
/** A drawing so much wider than high, or higher than wide, is a line. */
const WIDEST = 200;
