import { readFile } from 'node:fs/promises';
import type { Plugin } from 'vite';
import { loadFaces } from '../../fonts/node-faces.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { thinRing } from '../../geometry/measure/thin-ring.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Point, Ring } from '../../geometry/shapes.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

const PICTURE = /^(.*\/demo\/[\w-]+\.json)\?picture$/;
/** The picture's box goes from -200 to 200, in whole steps: on a card some 150 px wide, a step is less than a pixel. */
const HALF = 200;
/** A point is left out where the line without it runs no farther off than this. */
const MOST_OFF = 0.8;

/**
 * `demo/NAME.json?picture`: what is cut from a design's smallest plate, as path data. Made while the page is built, by
 * the same steps as the plate itself, so that the beginnings stand in the first thing painted.
 */
export function demoPictures(): Plugin {
  const store = createStore();
  return {
    name: 'demo-pictures',
    enforce: 'pre',
    load: {
      filter: { id: PICTURE },
      async handler(id) {
        const file = PICTURE.exec(id)?.[1] ?? '';
        const design = JSON.parse(await readFile(file, 'utf8')) as Design;
        // the smallest plate has the fewest bridges and looks the same at this size
        const plates = design.plates.slice(-1);
        const { faces, problems } = await loadFaces(design);
        if (problems.length > 0) throw new Error(`no picture of ${file}: ${problems[0]?.problem}`);
        const plate = makePlate({ ...design, plates }, plates[0]?.id ?? '', faces, store, BUILT_IN);
        return { code: `export default ${JSON.stringify(pathOf(plate))}`, moduleType: 'js' };
      },
    },
  };
}

/** Steps from point to point in whole numbers: a third of the same path with every point in full. */
function pathOf(plate: PlateResult): string {
  const scale = HALF / (plate.diameterMm / 2);
  const onGrid = (p: Point): Point => ({ x: Math.round(p.x), y: Math.round(p.y) });
  let at: Point = { x: 0, y: 0 };
  let path = '';
  const step = (to: Point, sign: string): void => {
    const [dx, dy] = [to.x - at.x, to.y - at.y];
    path += `${sign}${sign === '' && dx >= 0 ? ' ' : ''}${dx}${dy >= 0 ? ' ' : ''}${dy}`;
    at = to;
  };
  for (const ring of plate.openings.flatMap(({ region }): Ring[] => [region.outer, ...region.holes])) {
    // y up in the plate's frame, down on the screen
    const thin = thinRing(
      ring.map((p) => ({ x: p.x * scale, y: -p.y * scale })),
      MOST_OFF,
    ).map(onGrid);
    const [first, ...rest] = thin;
    if (!first) continue;
    step(first, 'm');
    rest.forEach((p, i) => step(p, i === 0 ? 'l' : ''));
    path += 'z';
    at = first;
  }
  return path;
}
