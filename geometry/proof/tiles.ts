import type { PageSize } from '../files/paper/page-size.ts';

/** A page at true size: the part of the plate that it shows, in the plate's frame with y down. */
export interface Tile {
  /** Row letter and column number, from the upper left: `A1`. */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** How much neighbouring pages have in common. */
export const OVERLAP_MM = 10;
/** What lies around a tile on its page: name above, lines to check below. */
export const TILE_FRAME = { left: 10, right: 10, top: 18, bottom: 26 };
/** Beyond the rim there must be paper to see it on. */
const RIM_MM = 2;

/** Pages that show all of a round plate at true size, row by row; pages that none of it is on are left out. */
export function layTiles(diameterMm: number, size: PageSize): Tile[] {
  const width = size.widthMm - TILE_FRAME.left - TILE_FRAME.right;
  const height = size.heightMm - TILE_FRAME.top - TILE_FRAME.bottom;
  const across = diameterMm + 2 * RIM_MM;
  const [columns, rows] = [countOf(across, width), countOf(across, height)];
  const left = -(columns * width - (columns - 1) * OVERLAP_MM) / 2;
  const top = -(rows * height - (rows - 1) * OVERLAP_MM) / 2;
  const all = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    return {
      name: `${String.fromCharCode(65 + row)}${column + 1}`,
      row,
      column,
      left: left + column * (width - OVERLAP_MM),
      top: top + row * (height - OVERLAP_MM),
      width,
      height,
    };
  });
  return all.filter((tile) => nearestMm(tile) <= diameterMm / 2 + RIM_MM);
}

function countOf(across: number, step: number): number {
  return Math.max(1, Math.ceil((across - OVERLAP_MM) / (step - OVERLAP_MM)));
}

/** From the plate's middle to the nearest point of the tile. */
function nearestMm({ left, top, width, height }: Tile): number {
  const [x, y] = [Math.max(left, -left - width, 0), Math.max(top, -top - height, 0)];
  return Math.hypot(x, y);
}
